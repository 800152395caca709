package assize.ruleset;

import assize.aspect.Vocabulary;
import assize.diagnostic.AcceptedWarning;
import assize.diagnostic.DiagnosticCode;
import assize.diagnostic.NameSuggestions;
import assize.schema.DefinedNames;
import assize.schema.MappingReader;
import assize.schema.ScalarReader;
import assize.yaml.MessageParts;
import assize.yaml.Node;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads which warnings the writer of a file lets stand, and why. */
public final class AcceptedReader {
  private final Set<String> known;
  private final boolean complete;
  private final ScalarReader values;

  /**
   * Begins.
   *
   * @param known every name that a warning can be about
   * @param complete whether those are all; if not, none is called unknown
   */
  public AcceptedReader(Set<String> known, boolean complete, ScalarReader values) {
    this.known = known;
    this.complete = complete;
    this.values = values;
  }

  /** Returns every name of a rule set that a warning can be about. */
  public static Set<String> names(Vocabulary names) {
    Set<String> all = new LinkedHashSet<>();
    for (DefinedNames some :
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

  public List<AcceptedWarning> read(Optional<Node.Entry> section) {
    List<AcceptedWarning> accepted = new ArrayList<>();
    for (Node.Entry one : values.list(section, "a list of warnings, each with its reason,")) {
      values
          .mapping(one, "a warning with its reason")
          .flatMap(this::accepted)
          .ifPresent(accepted::add);
    }
    return accepted;
  }

  private Optional<AcceptedWarning> accepted(Node.Mapping mapping) {
    MappingReader fields =
        values.fields(
            mapping,
            AcceptedWarningsSchema.ACCEPTED,
            mapping.entries().isEmpty() ? mapping.at() : mapping.entries().get(0).key().at());
    Optional<Node.Scalar> word =
        fields.get(AcceptedWarningsSchema.WARNING).flatMap(it -> values.scalar(it, "a warning"));
    Optional<DiagnosticCode> warning = word.flatMap(this::warning);
    List<String> of = new ArrayList<>();
    for (Node.Entry one : values.oneOrMore(fields.get(AcceptedWarningsSchema.ABOUT))) {
      values.scalar(one, "the name of what the warning is about").ifPresent(it -> name(it, of));
    }
    Optional<String> because = values.name(fields.get(AcceptedWarningsSchema.REASON));
    fields.done();
    return warning.flatMap(
        code -> because.map(why -> new AcceptedWarning(code, of, why, word.orElseThrow().at())));
  }

  private Optional<DiagnosticCode> warning(Node.Scalar text) {
    Optional<DiagnosticCode> code =
        DiagnosticCode.of(text.text())
            .filter(it -> AcceptedWarningsSchema.WARNINGS.contains(it.id()));
    if (code.isEmpty()) {
      boolean isError = DiagnosticCode.of(text.text()).isPresent();
      values
          .problems()
          .add(
              DiagnosticCode.UNKNOWN_WARNING,
              text.at(),
              isError
                  ? MessageParts.quoted(text.text()) + " can't be accepted"
                  : "there is no warning " + MessageParts.quoted(text.text()),
              isError
                  ? Optional.of("only warnings can; put this right")
                  : NameSuggestions.hint(text.text(), AcceptedWarningsSchema.WARNINGS));
    }
    return code;
  }

  private void name(Node.Scalar text, List<String> of) {
    of.add(text.text());
    if (complete && !known.contains(text.text())) {
      values
          .problems()
          .add(
              DiagnosticCode.UNKNOWN_NAME,
              text.at(),
              "nothing here is named " + MessageParts.quoted(text.text()),
              near(text.text())
                  .map(near -> NameSuggestions.question(text.text(), near))
                  .or(
                      () ->
                          Optional.of("name what the message names: an item, a source, a table")));
    }
  }

  private Optional<String> near(String name) {
    return values.problems().areMany() ? Optional.empty() : NameSuggestions.nearest(name, known);
  }
}
