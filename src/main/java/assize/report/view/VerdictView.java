package assize.report.view;

import assize.aspect.Verdict;

/**
 * A verdict by word and by shape.
 *
 * @param word as reports use it
 * @param shape the name of its sign, so that it is never told by color alone
 */
public record VerdictView(String word, String shape) {
  static VerdictView of(Verdict verdict) {
    return new VerdictView(verdict.word(), verdict.id());
  }
}
