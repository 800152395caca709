package assize.report.view;

import assize.aspect.Aspect;

/** Words for a yes or no, by what was asked. */
final class YesNoWords {
  private YesNoWords() {}

  static String of(Aspect aspect, boolean yes) {
    return switch (aspect) {
      case PRESENT -> yes ? "present" : "not present";
      case WORKS -> yes ? "works" : "does not work";
      case FINISH,
          COLOR,
          GLOSS,
          MATERIAL,
          PART_NUMBER,
          DATE_CODE,
          SIZE,
          COUNT,
          CHOICE,
          ORIGIN,
          CONDITION ->
          yes ? "yes" : "no";
    };
  }
}
