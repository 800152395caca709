package assize.docs;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * A pocket calculator: works out what a page writes down, by arithmetic of its own and none of the
 * program's. It knows + − × ÷ ² ^ √ and, in degrees, sin, cos and atan; exp; and Φ.
 */
final class Calculator {
  private static final MathContext PRECISE = MathContext.DECIMAL128;

  /** Half the number of steps of Simpson's rule between 0 and z. */
  private static final int STEPS = 1000;

  private final String text;
  private int at;

  private Calculator(String text) {
    this.text = text.replace(" ", "");
  }

  static BigDecimal of(String text) {
    Calculator calculator = new Calculator(text);
    BigDecimal value = calculator.sum();
    if (calculator.at < calculator.text.length()) {
      throw new IllegalArgumentException("can't work out: " + text);
    }
    return value;
  }

  /** Rounds as the program does: half to even. */
  static BigDecimal rounded(BigDecimal value, int decimals) {
    return value.setScale(decimals, RoundingMode.HALF_EVEN);
  }

  /** Reads a number as the page writes it. */
  static BigDecimal number(String written) {
    return new BigDecimal(written.replace('−', '-'));
  }

  private BigDecimal sum() {
    BigDecimal sum = product();
    while (true) {
      if (take('+')) {
        sum = sum.add(product(), PRECISE);
      } else if (take('−')) {
        sum = sum.subtract(product(), PRECISE);
      } else {
        return sum;
      }
    }
  }

  private BigDecimal product() {
    BigDecimal product = power();
    while (true) {
      if (take('×')) {
        product = product.multiply(power(), PRECISE);
      } else if (take('÷')) {
        product = product.divide(power(), PRECISE);
      } else {
        return product;
      }
    }
  }

  private BigDecimal power() {
    if (take('−')) {
      return power().negate();
    }
    BigDecimal power = atom();
    while (true) {
      if (take('²')) {
        power = power.multiply(power, PRECISE);
      } else if (take('^')) {
        power = power.pow(atom().intValueExact(), PRECISE);
      } else {
        return power;
      }
    }
  }

  private BigDecimal atom() {
    int from = at;
    while (at < text.length() && Character.isLetter(text.charAt(at))) {
      at++;
    }
    String name = take('√') ? "√" : text.substring(from, at);
    if (!name.isEmpty()) {
      return function(name, atom());
    }
    if (take('(')) {
      BigDecimal inner = sum();
      if (!take(')')) {
        throw new IllegalArgumentException("a bracket is open: " + text);
      }
      return inner;
    }
    while (at < text.length() && "0123456789.".indexOf(text.charAt(at)) >= 0) {
      at++;
    }
    return new BigDecimal(text.substring(from, at));
  }

  private BigDecimal function(String name, BigDecimal of) {
    double x = of.doubleValue();
    return switch (name) {
      case "√" -> of.sqrt(PRECISE);
      case "Φ" -> BigDecimal.valueOf(phi(x));
      case "sin" -> BigDecimal.valueOf(Math.sin(Math.toRadians(x)));
      case "cos" -> BigDecimal.valueOf(Math.cos(Math.toRadians(x)));
      case "atan" -> BigDecimal.valueOf(Math.toDegrees(Math.atan(x)));
      case "exp" -> BigDecimal.valueOf(Math.exp(x));
      default -> throw new IllegalArgumentException("no such key: " + name + " in " + text);
    };
  }

  /** The area under the normal curve up to z, by Simpson's rule. */
  static double phi(double z) {
    double step = z / (2 * STEPS);
    double sum = density(0) + density(z);
    for (int i = 1; i < 2 * STEPS; i++) {
      sum += density(i * step) * (i % 2 == 1 ? 4 : 2);
    }
    return 0.5 + sum * step / 3;
  }

  private static double density(double x) {
    return Math.exp(-x * x / 2) / Math.sqrt(2 * Math.PI);
  }

  private boolean take(char wanted) {
    boolean there = at < text.length() && text.charAt(at) == wanted;
    if (there) {
      at++;
    }
    return there;
  }
}
