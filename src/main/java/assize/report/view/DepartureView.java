package assize.report.view;

/**
 * That the owner knows it is not right, and why; an empty text stands for what is not said.
 *
 * @param kept what the allowance gives, in words
 * @param until when it is to be looked at again
 */
public record DepartureView(
    String anchor, String title, String reason, String why, String kept, String until) {}
