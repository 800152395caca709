package assize.report.vehicle;

import assize.report.view.LinkView;
import java.util.List;

/**
 * What the copy for others leaves out.
 *
 * @param words how many private words are masked, in a sentence; empty where there are none
 * @param omissions what was left out, and where
 * @param covered photos with parts painted over
 * @param bare photos without
 */
public record RedactionsView(
    List<NumberView> numbers,
    String words,
    List<String> omissions,
    List<PhotoView> covered,
    List<PhotoView> bare) {
  public RedactionsView {
    numbers = List.copyOf(numbers);
    omissions = List.copyOf(omissions);
    covered = List.copyOf(covered);
    bare = List.copyOf(bare);
  }

  /**
   * A masked number.
   *
   * @param name what it is the number of
   * @param times how often it is masked, in words
   * @param remark what else is to be known; empty: nothing
   * @param sha256 its hash
   */
  public record NumberView(
      String name, String masked, String times, String remark, String sha256) {}

  /**
   * A photo.
   *
   * @param boxes how many parts of it are painted over, in words
   */
  public record PhotoView(LinkView link, String file, String boxes) {}
}
