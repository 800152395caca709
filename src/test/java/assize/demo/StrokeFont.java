package assize.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Capitals and figures as a draftsman letters them: strokes on a grid four wide and six high. */
final class StrokeFont {
  /** Each pair of figures is a corner, x then y; a space lifts the pen. */
  private static final Map<Character, String> STROKES =
      Map.ofEntries(
          Map.entry('A', "062046 0434"),
          Map.entry('B', "0600304133420343 03334445360600"),
          Map.entry('C', "4130100105163645"),
          Map.entry('D', "06003041453606"),
          Map.entry('E', "40000646 0333"),
          Map.entry('F', "400006 0333"),
          Map.entry('G', "41301001051636454323"),
          Map.entry('H', "0006 4046 0343"),
          Map.entry('I', "0006"),
          Map.entry('J', "404536160504"),
          Map.entry('K', "0006 4003 1346"),
          Map.entry('L', "000646"),
          Map.entry('M', "0600234046"),
          Map.entry('N', "06004640"),
          Map.entry('O', "103041453616050110"),
          Map.entry('P', "060030414233 3303"),
          Map.entry('Q', "103041453616050110 2446"),
          Map.entry('R', "060030414233 3303 2346"),
          Map.entry('S', "41301001021343444536160504"),
          Map.entry('T', "0040 2026"),
          Map.entry('U', "000516364540"),
          Map.entry('V', "002640"),
          Map.entry('W', "0016233640"),
          Map.entry('X', "0046 4006"),
          Map.entry('Y', "002340 2326"),
          Map.entry('Z', "00400646"),
          Map.entry('0', "103041453616050110"),
          Map.entry('1', "021016"),
          Map.entry('2', "0110304142064606"),
          Map.entry('3', "004013334445361605"),
          Map.entry('4', "36300444"),
          Map.entry('5', "40000232434536160504"),
          Map.entry('6', "4130100105163645433303"),
          Map.entry('7', "004016"),
          Map.entry('8', "103041423313040516364544331302 0110 0213"),
          Map.entry('9', "4313020110304145361605"),
          Map.entry('.', "0506"),
          Map.entry(',', "0507"),
          Map.entry('\'', "0001"),
          Map.entry('-', "0343"),
          Map.entry('/', "0640"));

  private StrokeFont() {}

  /** Returns a line of text; small letters and unknown signs are spaces. */
  static Outline of(String text, double x, double y, double size) {
    double unit = size / 6;
    List<double[]> runs = new ArrayList<>();
    double left = x;
    for (char c : text.toCharArray()) {
      for (String stroke : STROKES.getOrDefault(c, "").split(" ")) {
        double[] run = new double[stroke.length()];
        for (int i = 0; i < run.length; i += 2) {
          run[i] = left + unit * Character.digit(stroke.charAt(i), 10);
          run[i + 1] = y + unit * Character.digit(stroke.charAt(i + 1), 10);
        }
        if (run.length > 0) {
          runs.add(run);
        }
      }
      left += advance(c) * unit;
    }
    return new Outline(runs);
  }

  /** Returns how wide a line of text will be. */
  static double width(String text, double size) {
    double units = 0;
    for (char c : text.toCharArray()) {
      units += advance(c);
    }
    return (units - 2) * size / 6;
  }

  private static double advance(char c) {
    return switch (c) {
      case 'I', '.', ',', '\'' -> 2.5;
      case '1' -> 3.5;
      case ' ' -> 4;
      default -> 6;
    };
  }
}
