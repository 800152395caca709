package assize.record;

import assize.aspect.Aspect;
import assize.aspect.Finding;
import assize.date.Edtf;
import assize.schema.Facts;
import assize.schema.Field;
import assize.schema.Field.Merging;
import assize.schema.MappingReader;
import assize.schema.PropertySchema;
import assize.schema.Reading;
import assize.schema.Table;
import assize.schema.Type;
import assize.schema.ValueSchema;
import assize.text.SourceFile;
import assize.yaml.Node;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** What was found at one item. */
public final class Observation extends Facts {
  private static final Pattern LINE_END = Pattern.compile("[ \\t]*:[ \\t]*(?:\\R|\\z)");

  public static final Field<AtItem, String> ITEM = Field.given("item", "", it -> it.item().id());

  private static final List<Field<AtItem, Optional<Finding>>> ASPECTS =
      Arrays.stream(Aspect.values()).map(Observation::aspect).toList();

  public static final Field<AtItem, List<String>> EVIDENCE = RecordReading.evidence(AtItem::record);
  public static final Field<Reading, Optional<String>> NOTE =
      Field.<Reading, String>may("note", Type.text(), "What else should be known.")
          .merging(Merging.SAID);
  public static final Field<Reading, Optional<String>> BY =
      Field.<Reading, String>may("by", Type.text(), "Who looked, if not who judged.")
          .merging(Merging.WITNESS);
  public static final Field<Reading, Optional<Edtf>> ON =
      Field.<Reading, Edtf>may("on", Type.date("2026-10-03"), "When, if not when it was judged.")
          .merging(Merging.WITNESS);
  public static final Field<Reading, Optional<Departure>> DEPARTURE =
      Field.<Reading, Departure>may(
              "departure",
              Type.group(Departure.TABLE),
              "Why it is not right, where the owner knows that.")
          .merging(Merging.SAID);

  public static final Field<AtItem, Optional<Opinion>> OWNER_VIEW =
      Field.<AtItem, Opinion>may(
              "owner_view",
              Type.group(Opinion.TABLE),
              "What the owner expects where sources differ; it is shown and does not count.")
          .merging(Merging.SAID);

  /** What can stay out of the copy for others. */
  public static final List<Secret<Observation>> SECRETS =
      List.of(
          Secret.of("the note", NOTE, it -> it.with(NOTE, NOTE.none())),
          new Secret<>("by", "by", "who looked", Observation::saysBy, Observation::withoutBy),
          Secret.of("when", ON, it -> it.with(ON, ON.none())),
          Secret.of("its evidence", EVIDENCE, it -> it.with(EVIDENCE, EVIDENCE.none())),
          new Secret<>(
              Departure.EXPLANATION.name(),
              DEPARTURE.name(),
              "why it departs on purpose",
              it -> it.departure().flatMap(Departure::explanation).isPresent(),
              it ->
                  it.with(
                      DEPARTURE,
                      it.departure()
                          .map(one -> one.with(Departure.EXPLANATION, Optional.empty())))),
          Secret.of(
              "what the owner expects", OWNER_VIEW, it -> it.with(OWNER_VIEW, OWNER_VIEW.none())));

  public static final Field<Reading, Set<String>> PRIVATE =
      Field.orNone(
          "private",
          Set.of(),
          Secret.some(SECRETS),
          "What stays out of the copy for others; yes for all of it.");

  public static final Table<AtItem, Observation> TABLE =
      Table.of("an item", Observation::new, fields());

  private final Map<Aspect, Finding> findings;

  private Observation(Drawn drawn) {
    super(drawn);
    Map<Aspect, Finding> found = new LinkedHashMap<>();
    for (Aspect aspect : Aspect.values()) {
      get(of(aspect)).ifPresent(it -> found.put(aspect, it));
    }
    this.findings = found.size() < 2 ? Map.copyOf(found) : Collections.unmodifiableMap(found);
  }

  private static List<Field<? super AtItem, ?>> fields() {
    List<Field<? super AtItem, ?>> all = new ArrayList<>(List.of(ITEM));
    all.addAll(ASPECTS);
    all.addAll(List.of(EVIDENCE, NOTE, BY, ON, DEPARTURE, OWNER_VIEW, PRIVATE));
    return all;
  }

  private static Field<AtItem, Optional<Finding>> aspect(Aspect aspect) {
    return Field.of(
            Optional.<Finding>empty(),
            (MappingReader fields, AtItem in) ->
                fields
                    .get(aspect.word())
                    .filter(it -> in.record().isAsked(in.item(), aspect, it))
                    .filter(it -> !isLeftBlank(it))
                    .flatMap(it -> aspect.kind().seen(it, in.record().aspects(in.item()))),
            PropertySchema.may(
                aspect.word(),
                ValueSchema.either(aspect.kind().seen(), new ValueSchema.Blank()),
                aspect.aboutSeen()))
        .alike(
            (one, other) -> one.isPresent() && other.isPresent() && one.get().sameAs(other.get()))
        .reworded((found, rewording) -> found.flatMap(it -> it.reworded(aspect.word(), rewording)))
        .merging(Merging.SAID);
  }

  /** Says whether a name ends its line with its colon: not looked at yet. */
  private static boolean isLeftBlank(Node.Entry entry) {
    if (!(entry.value() instanceof Node.Scalar text) || !text.isNothing()) {
      return false;
    }
    SourceFile file = entry.key().at().file();
    String behind = file.text().substring(entry.key().at().end());
    return text.text().isEmpty() && LINE_END.matcher(behind).lookingAt();
  }

  /** Returns an observation of an item of which nothing is said. */
  public static Observation of(String item) {
    return TABLE.blank().with(ITEM, item);
  }

  /** Returns the texts that say something of the item in a person's own words, by their names. */
  public Map<String, String> texts() {
    Map<String, String> texts = new LinkedHashMap<>();
    for (Field<? super AtItem, ?> field : TABLE.fields()) {
      if (field.merging() == Merging.SAID && field.keys().get(0).value().isAnyText()) {
        texts.put(field.name(), said(get(field)));
      }
    }
    return texts;
  }

  private static String said(Object text) {
    return text instanceof Optional<?> it ? it.map(Object::toString).orElse("") : text.toString();
  }

  /** Returns the fact that tells what was found of an aspect. */
  public static Field<AtItem, Optional<Finding>> of(Aspect aspect) {
    return ASPECTS.get(aspect.ordinal());
  }

  public String item() {
    return get(ITEM);
  }

  /** Returns what was found, for each aspect that was looked at. */
  public Map<Aspect, Finding> findings() {
    return findings;
  }

  /** Returns names of the record's evidence. */
  public List<String> evidence() {
    return get(EVIDENCE);
  }

  public Optional<String> note() {
    return get(NOTE);
  }

  public Optional<String> by() {
    return get(BY);
  }

  public Optional<Edtf> on() {
    return get(ON);
  }

  public Optional<Departure> departure() {
    return get(DEPARTURE);
  }

  /** Returns what the owner expects where sources differ; it does not count as evidence. */
  public Optional<Opinion> ownerView() {
    return get(OWNER_VIEW);
  }

  /** Returns what of it stays out of the copy for others. */
  public Set<String> unshared() {
    return get(PRIVATE);
  }

  private boolean saysBy() {
    return by().isPresent() || findings.values().stream().anyMatch(Finding::saysBy);
  }

  private Observation withoutBy() {
    Observation bare = with(BY, Optional.empty());
    for (Map.Entry<Aspect, Finding> one : findings.entrySet()) {
      bare = bare.found(one.getKey(), one.getValue().withoutBy());
    }
    return bare;
  }

  /** Returns the same with what was found of an aspect. */
  public Observation found(Aspect aspect, Finding finding) {
    return with(of(aspect), Optional.of(finding));
  }

  /** Returns the same, one of its facts changed. */
  public <T> Observation with(Field<?, T> field, T value) {
    return TABLE.with(this, field, value);
  }
}
