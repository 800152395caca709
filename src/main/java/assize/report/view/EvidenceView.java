package assize.report.view;

import java.util.List;

/**
 * Something that shows what was found; an empty text stands for what is not said.
 *
 * @param id its name in the record, and the key of its picture
 * @param anchor where its picture is, or in the list at the back what is known of it
 * @param kind photo, document or measurement
 * @param what the file, or what was measured with
 * @param taken when, in words
 * @param by whom it is from
 * @param photo whether it is a picture
 * @param here whether its picture is shown here, and not only linked to
 * @param place where its picture is shown, and what that place is called
 * @param items the items that cite it
 * @param size of the file, in words
 * @param sha256 of the file
 * @param reason why its picture can't be shown
 */
public record EvidenceView(
    String id,
    String anchor,
    String kind,
    String what,
    String caption,
    String taken,
    String by,
    boolean photo,
    boolean here,
    LinkView place,
    List<LinkView> items,
    String size,
    String sha256,
    String reason) {
  public EvidenceView {
    items = List.copyOf(items);
  }

  /**
   * A picture of one place in the page that no other place shows.
   *
   * @param id the key of its picture
   * @param anchor free in this page
   */
  public static EvidenceView picture(
      String id, String anchor, String file, String caption, LinkView place) {
    return new EvidenceView(
        id, anchor, "photo", file, caption, "", "", true, true, place, List.of(), "", "", "");
  }

  /** Returns what a picture shows, in words. */
  public String alt() {
    return caption.isBlank() ? "Photo " + what : caption;
  }
}
