package assize.report.view;

/**
 * A place in the page, and what it is called.
 *
 * @param anchor the id that a link leads to
 */
public record LinkView(String anchor, String words) {}
