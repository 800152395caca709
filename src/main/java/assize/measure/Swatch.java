package assize.measure;

import java.util.HexFormat;

/**
 * A color as a screen can show it in sRGB (IEC 61966-2-1); never evidence of the color itself.
 *
 * @param hex such as {@code #5a6b3c}
 * @param clipped whether the screen can't show it, and this is the nearest in each channel
 */
public record Swatch(String hex, boolean clipped) {
  /** Less than half a step of a channel is rounding, not clipping. */
  private static final double ROUNDING = 0.001;

  /** Returns the swatch of a color given for D65 and the 2° observer. */
  public static Swatch of(CieLab lab) {
    double y = (lab.l() + 16) / 116;
    double x = 0.95047 * linear(y + lab.a() / 500);
    double z = 1.08883 * linear(y - lab.b() / 200);
    double luminance = linear(y);
    double red = encode(3.2404542 * x - 1.5371385 * luminance - 0.4985314 * z);
    double green = encode(-0.9692660 * x + 1.8760108 * luminance + 0.0415560 * z);
    double blue = encode(0.0556434 * x - 0.2040259 * luminance + 1.0572252 * z);
    byte[] bytes = {channel(red), channel(green), channel(blue)};
    boolean clipped = isOutside(red) || isOutside(green) || isOutside(blue);
    return new Swatch("#" + HexFormat.of().formatHex(bytes), clipped);
  }

  private static double linear(double t) {
    double edge = 6.0 / 29;
    return t > edge ? t * t * t : 3 * edge * edge * (t - 4.0 / 29);
  }

  private static double encode(double light) {
    return light <= 0.0031308 ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055;
  }

  private static boolean isOutside(double value) {
    return value < -ROUNDING || value > 1 + ROUNDING;
  }

  private static byte channel(double value) {
    return (byte) Math.round(255 * Math.max(0, Math.min(1, value)));
  }
}
