package assize.ruleset;

import assize.aspect.Vocabulary;
import assize.diagnostic.Accepted;
import assize.diagnostic.Code;
import assize.diagnostic.NearNames;
import assize.schema.Fields;
import assize.schema.Names;
import assize.schema.Values;
import assize.yaml.Node;
import assize.yaml.Words;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads which doubts the writer of a file lets stand, and why. */
public final class AcceptedReader {
  private final Set<String> known;
  private final boolean complete;
  private final Values values;

  /**
   * Begins.
   *
   * @param known every name that a doubt can be about
   * @param complete whether those are all; if not, none is called unknown
   */
  public AcceptedReader(Set<String> known, boolean complete, Values values) {
    this.known = known;
    this.complete = complete;
    this.values = values;
  }

  /** Returns every name of a rule set that a doubt can be about. */
  public static Set<String> names(Vocabulary names) {
    Set<String> all = new LinkedHashSet<>();
    for (Names some :
        List.of(
            names.items,
            names.sources,
            names.areas,
            names.numbers,
            names.models,
            names.equipment,
            names.plants,
            names.markets,
            names.colors,
            names.finishes,
            names.materials)) {
      all.addAll(some.all());
    }
    return all;
  }

  public List<Accepted> read(Optional<Node.Entry> section) {
    List<Accepted> accepted = new ArrayList<>();
    for (Node.Entry one : values.list(section, "a list of doubts, each with its reason,")) {
      values
          .mapping(one, "a doubt with its reason")
          .flatMap(this::accepted)
          .ifPresent(accepted::add);
    }
    return accepted;
  }

  private Optional<Accepted> accepted(Node.Mapping mapping) {
    Fields fields =
        values.fields(
            mapping,
            AcceptedShape.ACCEPTED,
            mapping.entries().isEmpty() ? mapping.at() : mapping.entries().get(0).key().at());
    Optional<Node.Scalar> word =
        fields.get(AcceptedShape.DOUBT).flatMap(it -> values.scalar(it, "a doubt"));
    Optional<Code> doubt = word.flatMap(this::doubt);
    List<String> of = new ArrayList<>();
    for (Node.Entry one : values.oneOrMore(fields.get(AcceptedShape.OF))) {
      values.scalar(one, "the name of what the doubt is about").ifPresent(it -> name(it, of));
    }
    Optional<String> because = values.name(fields.get(AcceptedShape.BECAUSE));
    fields.done();
    return doubt.flatMap(
        code -> because.map(why -> new Accepted(code, of, why, word.orElseThrow().at())));
  }

  private Optional<Code> doubt(Node.Scalar text) {
    Optional<Code> code = Code.of(text.text()).filter(it -> AcceptedShape.DOUBTS.contains(it.id()));
    if (code.isEmpty()) {
      boolean isError = Code.of(text.text()).isPresent();
      values
          .problems()
          .add(
              Code.UNKNOWN_WARNING,
              text.at(),
              isError
                  ? Words.quoted(text.text()) + " can't be accepted"
                  : "there is no doubt " + Words.quoted(text.text()),
              isError
                  ? Optional.of("only doubts can; put this right")
                  : NearNames.hint(text.text(), AcceptedShape.DOUBTS));
    }
    return code;
  }

  private void name(Node.Scalar text, List<String> of) {
    of.add(text.text());
    if (complete && !known.contains(text.text())) {
      values
          .problems()
          .add(
              Code.UNKNOWN_NAME,
              text.at(),
              "nothing here is named " + Words.quoted(text.text()),
              near(text.text())
                  .map(near -> NearNames.question(text.text(), near))
                  .or(
                      () ->
                          Optional.of("name what the message names: an item, a source, a table")));
    }
  }

  private Optional<String> near(String name) {
    return values.problems().areMany() ? Optional.empty() : NearNames.nearest(name, known);
  }
}
