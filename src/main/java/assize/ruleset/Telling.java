package assize.ruleset;

import assize.aspect.Expectation;
import assize.diagnostic.DiagnosticCode;
import assize.evidence.Claim;
import assize.evidence.ClaimKind;
import assize.evidence.Scope;
import assize.schema.Facts;
import assize.schema.Field;
import assize.schema.MappingReader;
import assize.schema.PropertyConstraint;
import assize.schema.PropertySchema;
import assize.schema.Reading;
import assize.schema.ScalarFormat;
import assize.schema.Table;
import assize.schema.Type;
import assize.text.Span;
import assize.yaml.Node;
import java.util.List;
import java.util.Optional;

/** One entry of an item's claims: what a source says of one aspect or several. */
final class Telling extends Facts {
  private static final PropertySchema BY =
      PropertySchema.may("source", ScalarFormat.name(), "Who says so: a source of this rule set.");

  static final Field<ItemReading, Optional<String>> SOURCE =
      Field.of(Optional.empty(), Telling::source, BY);
  static final Field<Reading, Optional<String>> CITE =
      Field.may("cite", Type.text(), "Where it says so: note 7.");
  static final Field<ItemReading, Scope> SCOPE =
      Field.of(Scope.EVERY, (fields, in) -> Scopes.read(fields, in.definition()), Scopes.keys());
  static final Field<ItemReading, Optional<Claim.Photo>> PHOTO =
      Field.of(
          Optional.empty(),
          (fields, in) -> in.photos().read(fields),
          ClaimPhotos.PHOTO,
          ClaimPhotos.CAPTION);
  static final Field<Reading, Optional<ClaimKindReader.Said>> SAID =
      Field.of(
          Optional.empty(),
          (fields, in) -> ClaimKindReader.read(fields, in.values()),
          AspectSchemas.manners().toArray(PropertySchema[]::new));

  static final Table<ItemReading, Telling> TABLE =
      Table.of(
          "a claim",
          Telling::new,
          List.of(SOURCE, CITE, SCOPE, PHOTO, SAID),
          PropertyConstraint.anyOf(BY.name()),
          AspectSchemas.oneManner(),
          PropertyConstraint.needs(ClaimPhotos.CAPTION.name(), ClaimPhotos.PHOTO.name()));

  private Telling(Drawn drawn) {
    super(drawn);
  }

  private static Optional<String> source(MappingReader fields, ItemReading in) {
    Optional<Node.Entry> source = fields.get(BY);
    if (source.isEmpty()) {
      in.values()
          .problems()
          .add(
              DiagnosticCode.CLAIM_WITHOUT_SOURCE,
              fields.at(),
              "this claim does not say whose it is",
              "add `source:`");
    }
    return source.flatMap(it -> in.names().sources.find(it, in.values()));
  }

  static Optional<Telling> read(Node.Entry entry, ItemReading in) {
    return in.values()
        .mapping(entry, "a claim with its source")
        .flatMap(
            it ->
                TABLE.read(
                    in.values()
                        .fields(
                            it,
                            TABLE.block(),
                            it.entries().isEmpty() ? it.at() : it.entries().get(0).key().at()),
                    in,
                    it.at()));
  }

  /** Returns what is said of one of the aspects. */
  Claim claim(List<Expectation> values, Span at) {
    ClaimKind manner = get(SAID).orElseThrow().manner();
    return new Claim(get(SOURCE), get(CITE), get(SCOPE), manner, values, get(PHOTO), at);
  }
}
