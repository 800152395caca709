package assize.report.sheet;

import assize.report.sheet.SheetView.Bounds;
import assize.report.sheet.SheetView.RecordName;
import assize.schema.ObjectSchema;
import assize.schema.ValueSchema;
import java.util.List;

/** The names that a record may hold, in their order, as far as its tables tell. */
final class RecordNames {
  private RecordNames() {}

  static List<RecordName> of(ObjectSchema block) {
    return block.keys().stream().map(it -> name(it.name(), it.value())).toList();
  }

  private static RecordName name(String name, ValueSchema value) {
    return new RecordName(name, bounds(value), below(value));
  }

  private static List<RecordName> below(ValueSchema value) {
    if (value instanceof ValueSchema.Group group) {
      return of(group.block());
    }
    if (value instanceof ValueSchema.Named named) {
      return List.of(name("", named.each()));
    }
    return value instanceof ValueSchema.Either either
        ? either.ways().stream()
            .map(RecordNames::below)
            .filter(it -> !it.isEmpty())
            .findFirst()
            .orElse(List.of())
        : List.of();
  }

  private static List<Bounds> bounds(ValueSchema value) {
    if (value instanceof ValueSchema.Scalar scalar) {
      return scalar.form().bounds().stream().map(it -> new Bounds(it.least(), it.most())).toList();
    }
    if (value instanceof ValueSchema.Row row) {
      return row.each().stream().flatMap(it -> bounds(it).stream()).toList();
    }
    return value instanceof ValueSchema.Either either
        ? either.ways().stream().flatMap(it -> bounds(it).stream()).toList()
        : List.of();
  }
}
