package assize.report.view;

/**
 * What the owner holds to be right, in the owner's words; it weighs nothing.
 *
 * @param because empty where no reason is given
 * @param stands how that lies to the positions of the sources
 */
public record OwnerView(String aspect, String holds, String because, String stands) {}
