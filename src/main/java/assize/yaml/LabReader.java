package assize.yaml;

import assize.diagnostic.Code;
import assize.measure.Lab;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads what an instrument says of a color. */
final class LabReader {
  private final Values values;

  LabReader(Values values) {
    this.values = values;
  }

  /** Reads three numbers, L* from 0 to 100, a* and b* from -128 to 128. */
  Optional<Lab> read(Node.Entry entry) {
    List<Node.Entry> parts = values.list(Optional.of(entry), "a list of three numbers, [L, a, b],");
    if (parts.size() != 3) {
      if (entry.value() instanceof Node.Sequence) {
        values
            .problems()
            .add(Code.BAD_LAB, entry.at(), "a reading is three numbers, as in [34.2, -18.5, 9.1]");
      }
      return Optional.empty();
    }
    List<Double> numbers = new ArrayList<>();
    for (Node.Entry part : parts) {
      boolean lightness = numbers.isEmpty();
      String which = lightness ? "L*" : numbers.size() == 1 ? "a*" : "b*";
      values
          .decimal(Optional.of(part), lightness ? 0 : -128, lightness ? 100 : 128, which)
          .ifPresent(numbers::add);
    }
    return numbers.size() == 3
        ? Optional.of(new Lab(numbers.get(0), numbers.get(1), numbers.get(2)))
        : Optional.empty();
  }
}
