package assize.measure;

/**
 * The normal distribution, accurate in both tails.
 *
 * <p>W. J. Cody, "Rational Chebyshev approximations for the error function", Mathematics of
 * Computation 23 (1969) 631-637; coefficients as in his CALERF.
 */
@SuppressWarnings("FloatingPointLiteralPrecision") // The coefficients stand as published.
final class NormalDistribution {
  private static final double ONE_OVER_SQRT_PI = 5.6418958354775628695e-1;

  private static final double[] A = {
    1.85777706184603153e-1,
    3.16112374387056560e00,
    1.13864154151050156e02,
    3.77485237685302021e02,
    3.20937758913846947e03
  };
  private static final double[] B = {
    1,
    2.36012909523441209e01,
    2.44024637934444173e02,
    1.28261652607737228e03,
    2.84423683343917062e03
  };
  private static final double[] C = {
    2.15311535474403846e-8,
    5.64188496988670089e-1,
    8.88314979438837594e0,
    6.61191906371416295e01,
    2.98635138197400131e02,
    8.81952221241769090e02,
    1.71204761263407058e03,
    2.05107837782607147e03,
    1.23033935479799725e03
  };
  private static final double[] D = {
    1,
    1.57449261107098347e01,
    1.17693950891312499e02,
    5.37181101862009858e02,
    1.62138957456669019e03,
    3.29079923573345963e03,
    4.36261909014324716e03,
    3.43936767414372164e03,
    1.23033935480374942e03
  };
  private static final double[] P = {
    1.63153871373020978e-2,
    3.05326634961232344e-1,
    3.60344899949804439e-1,
    1.25781726111229246e-1,
    1.60837851487422766e-2,
    6.58749161529837803e-4
  };
  private static final double[] Q = {
    1,
    2.56852019228982242e00,
    1.87295284992346047e00,
    5.27905102951428412e-1,
    6.05183413124413191e-2,
    2.33520497626869185e-3
  };

  private NormalDistribution() {}

  /** Returns Φ(z), the share of the distribution at or below z standard deviations. */
  static double phi(double z) {
    return 0.5 * erfc(-z / Math.sqrt(2));
  }

  /** Returns Φ(b) − Φ(a) for a ≤ b, without cancellation where both lie in one tail. */
  static double between(double a, double b) {
    if (a > 0) {
      return phi(-a) - phi(-b);
    }
    if (b < 0) {
      return phi(b) - phi(a);
    }
    return 1 - (phi(a) + phi(-b));
  }

  static double erfc(double x) {
    double y = Math.abs(x);
    if (y <= 0.46875) {
      return 1 - x * ratio(A, B, y * y);
    }
    double tail = y <= 4 ? expMinusSquare(y) * ratio(C, D, y) : farTail(y);
    return x < 0 ? 2 - tail : tail;
  }

  private static double farTail(double y) {
    if (y > 27) {
      return 0;
    }
    double s = 1 / (y * y);
    return expMinusSquare(y) * (ONE_OVER_SQRT_PI - s * ratio(P, Q, s)) / y;
  }

  /** exp(−y²) with y² split in two, so that its rounding does not grow in the exponent. */
  private static double expMinusSquare(double y) {
    double coarse = Math.rint(y * 16) / 16;
    return Math.exp(-coarse * coarse) * Math.exp(-(y - coarse) * (y + coarse));
  }

  private static double ratio(double[] above, double[] below, double x) {
    return horner(above, x) / horner(below, x);
  }

  /** Coefficients from the highest power down. */
  private static double horner(double[] coefficients, double x) {
    double sum = 0;
    for (double c : coefficients) {
      sum = sum * x + c;
    }
    return sum;
  }
}
