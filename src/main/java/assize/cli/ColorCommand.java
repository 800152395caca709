package assize.cli;

import assize.measure.CieLab;
import assize.measure.Ciede2000;
import assize.measure.ColorDifference;
import assize.text.Json;
import assize.text.Parsed;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says how far two colors are apart. */
@Command(
    name = "color",
    description = "Says how far two colors are apart (CIEDE2000).",
    mixinStandardHelpOptions = true)
final class ColorCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(index = "0", paramLabel = "L,a,b", description = "For example 34.2,-18.5,9.1")
  private String one = "";

  @Parameters(index = "1", paramLabel = "L,a,b", description = "The other color.")
  private String other = "";

  @Option(names = "--json", description = "As a JSON object.")
  private boolean json;

  ColorCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Parsed<ColorDifference> difference =
        read(one).then(a -> read(other).map(b -> Ciede2000.of(a, b)));
    return difference.match(this::print, this::refuse);
  }

  private static Parsed<CieLab> read(String text) {
    return CieLab.parse(text)
        .match(Parsed::ok, bad -> Parsed.bad(text + ": " + bad.reason(), bad.at(), bad.length()));
  }

  private int print(ColorDifference difference) {
    if (json) {
      terminal.result(
          Json.object()
              .number("delta_e00", difference.de00(), 4)
              .number("delta_l", difference.dL(), 4)
              .number("delta_c", difference.dC(), 4)
              .number("delta_h", difference.dH(), 4)
              .toString());
    } else {
      terminal.result("color difference ΔE00  " + figure(difference.de00()));
      terminal.result("  lightness      ΔL′   " + figure(difference.dL()));
      terminal.result("  chroma         ΔC′   " + figure(difference.dC()));
      terminal.result("  hue            ΔH′   " + figure(difference.dH()));
    }
    return Exit.DONE;
  }

  private int refuse(Parsed.Bad<ColorDifference> bad) {
    if (json) {
      terminal.result(DateCommand.errorJson(bad));
    } else {
      terminal.error(bad.reason());
    }
    return Exit.BAD_INPUT;
  }

  private static String figure(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(4, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
