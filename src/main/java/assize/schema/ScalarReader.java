package assize.schema;

import assize.diagnostic.DiagnosticCode;
import assize.text.Ascii;
import assize.text.Invisible;
import assize.text.Parsed;
import assize.text.Span;
import assize.yaml.DiagnosticCollector;
import assize.yaml.InvisibleCharacterCheck;
import assize.yaml.MessageParts;
import assize.yaml.Node;
import assize.yaml.PortablePathCheck;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.IntPredicate;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads what is written under one name as a text, a number, a credit, a group, and so on. */
public final class ScalarReader {
  private static final int LONGEST_ID = 64;
  private static final BigInteger THOUSAND = BigInteger.valueOf(1000);
  private static final BigFraction MOST_POINTS = BigFraction.of(1_000_000);

  private final DiagnosticCollector problems;

  public ScalarReader(DiagnosticCollector problems) {
    this.problems = problems;
  }

  public DiagnosticCollector problems() {
    return problems;
  }

  /** Reads a single text, with what it should have been for the message. */
  public Optional<Node.Scalar> scalar(Node.Entry entry, String wanted) {
    Optional<Node.Scalar> found =
        entry.value().match(m -> Optional.empty(), s -> Optional.empty(), Optional::of);
    if (found.isEmpty()) {
      wrongShape(entry, wanted);
    }
    return found.filter(scalar -> isSomething(entry, scalar));
  }

  private boolean isSomething(Node.Entry entry, Node.Scalar scalar) {
    if (scalar.isNothing()) {
      nothingWritten(entry);
    }
    return !scalar.isNothing();
  }

  private void nothingWritten(Node.Entry entry) {
    Span key = entry.key().at();
    boolean isRemark = !problems.areMany() && key.file().line(key.line()).contains(" #");
    problems.add(
        DiagnosticCode.MISSING_VALUE,
        entry.at(),
        "nothing is written after `" + MessageParts.brief(entry.name()) + ":`",
        isRemark
            ? "what stands behind # is a remark; put a text that has one in quotes"
            : "fill it in or leave the line out");
  }

  private void wrongShape(Node.Entry entry, String wanted) {
    boolean nothing = entry.value() instanceof Node.Scalar scalar && scalar.isNothing();
    if (nothing) {
      nothingWritten(entry);
      return;
    }
    problems.add(
        DiagnosticCode.WRONG_STRUCTURE,
        entry.at(),
        entry.value().kind()
            + " is written under `"
            + MessageParts.brief(entry.name())
            + "` where "
            + wanted
            + " should stand");
  }

  /** Reads a remark; one that shows nothing is as good as none. */
  public Optional<String> text(Optional<Node.Entry> entry) {
    return entry
        .flatMap(it -> scalar(it, "a single text"))
        .map(it -> it.text().strip())
        .filter(it -> !Invisible.isAllOf(it));
  }

  /** Reads a text that has to show something: a name, a title, a reason. */
  public Optional<String> name(Optional<Node.Entry> entry) {
    return visible(entry, "a single text").map(it -> it.text().strip());
  }

  /** Reads a number as it is stamped. */
  public Optional<String> stamp(Optional<Node.Entry> entry) {
    Optional<Node.Scalar> stamp = visible(entry, "a single text");
    stamp.ifPresent(this::checkStamp);
    return stamp.map(it -> it.text().strip());
  }

  /** Reads a word of the writer's own, which files compare letter by letter. */
  public Optional<String> word(Optional<Node.Entry> entry) {
    Optional<Node.Scalar> word = visible(entry, "a single text");
    word.ifPresent(this::checkLetters);
    return word.map(it -> it.text().strip());
  }

  /** Reads a text that has to show something, as it stands. */
  public Optional<Node.Scalar> visible(Optional<Node.Entry> entry, String wanted) {
    return entry
        .flatMap(it -> scalar(it, wanted))
        .filter(it -> isVisible(it, "`" + MessageParts.brief(entry.orElseThrow().name()) + "`"));
  }

  private boolean isVisible(Node.Scalar text, String what) {
    boolean isVisible = !Invisible.isAllOf(text.text());
    if (!isVisible) {
      String only =
          text.text()
              .codePoints()
              .filter(c -> c != ' ')
              .mapToObj(c -> ": it has only " + Invisible.number(c) + " in it")
              .findFirst()
              .orElse("");
      problems.add(
          DiagnosticCode.BLANK_NAME,
          text.at(),
          what + " shows nothing" + only,
          "write what can be seen");
    }
    return isVisible;
  }

  /** Reports a word that shows nothing, or that has something in it that can't be seen. */
  public void checkWord(Node.Scalar word) {
    if (isVisible(word, "this word")) {
      checkLetters(word);
    }
  }

  private void checkLetters(Node.Scalar word) {
    checkLetters(word, c -> c != ' ' && Invisible.is(c));
  }

  /** Reports what is hidden in a number as it is stamped, of which spaces don't count. */
  public void checkStamp(Node.Scalar stamp) {
    checkLetters(stamp, Invisible::isHidden);
  }

  private void checkLetters(Node.Scalar word, IntPredicate isOdd) {
    if (Ascii.hasBesides(word.text(), isOdd) && !InvisibleCharacterCheck.hasUnseen(word.text())) {
      int odd = word.text().codePoints().filter(isOdd).findFirst().orElse(' ');
      problems.add(
          DiagnosticCode.CONTROL_CHARACTER,
          word.at(),
          "a character that can't be seen stands in this word (" + Invisible.number(odd) + ")",
          Invisible.isSpace(odd) ? "write a plain space" : "delete it");
    }
  }

  /** Reads a name that files are named by: letters, digits and dashes. */
  public Optional<String> id(Optional<Node.Entry> entry) {
    return entry.flatMap(it -> scalar(it, "a name")).map(this::checkFileId);
  }

  private String checkFileId(Node.Scalar name) {
    if (PortablePathCheck.isDevice(name.text())) {
      problems.add(
          DiagnosticCode.BAD_NAME,
          name.at(),
          MessageParts.quoted(name.text())
              + " is a device on some systems; no file can be called so");
    }
    return checkId(name);
  }

  /** Returns a name as it is, and reports it if it has other letters than names may have. */
  public String checkId(Node.Scalar name) {
    if (!isId(name.text())) {
      problems.add(
          DiagnosticCode.BAD_NAME,
          name.at(),
          "a name has letters (a to z), digits and dashes; this is "
              + MessageParts.quoted(name.text()));
    }
    return name.text();
  }

  private static boolean isId(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean letter = c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9';
      if (!letter && (c != '-' || i == 0)) {
        return false;
      }
    }
    return !text.isEmpty() && text.length() <= LONGEST_ID;
  }

  /** Reads names, each with what belongs to it. */
  public List<Node.Entry> entries(Optional<Node.Entry> entry, String wanted) {
    return entry.flatMap(it -> mapping(it, wanted)).map(Node.Mapping::entries).orElse(List.of());
  }

  public Optional<Node.Mapping> mapping(Node.Entry entry, String wanted) {
    Optional<Node.Mapping> found =
        entry.value().match(Optional::of, s -> Optional.empty(), s -> Optional.empty());
    if (found.isEmpty()) {
      wrongShape(entry, wanted);
    }
    return found;
  }

  /** Reads the names under a name. */
  public Optional<MappingReader> fields(Node.Entry entry, ObjectSchema block) {
    return fields(entry, block.owner(), block);
  }

  /** Reads the names under a name, which belong to what {@code owner} says. */
  public Optional<MappingReader> fields(Node.Entry entry, String owner, ObjectSchema block) {
    return mapping(entry, "a group of names")
        .map(it -> new MappingReader(it, owner, block, entry.key().at(), problems));
  }

  public MappingReader fields(Node.Mapping mapping, ObjectSchema block, Span at) {
    return new MappingReader(mapping, block.owner(), block, at, problems);
  }

  /** Reads one thing or a list of them, each under the name of the list. */
  public List<Node.Entry> oneOrMore(Optional<Node.Entry> entry) {
    return entry
        .map(
            it ->
                it.value()
                    .<List<Node.Entry>>match(
                        mapping -> List.of(it),
                        list -> each(it, list),
                        scalar -> isSomething(it, scalar) ? List.of(it) : List.of()))
        .orElse(List.of());
  }

  /** Reads a list. */
  public List<Node.Entry> list(Optional<Node.Entry> entry, String wanted) {
    return entry
        .map(
            it ->
                it.value()
                    .<List<Node.Entry>>match(
                        mapping -> noList(it, wanted),
                        list -> each(it, list),
                        scalar -> noList(it, wanted)))
        .orElse(List.of());
  }

  private static List<Node.Entry> each(Node.Entry entry, Node.Sequence list) {
    List<Node.Entry> parts = new ArrayList<>(list.nodes().size());
    for (Node one : list.nodes()) {
      parts.add(entry.with(one));
    }
    return parts;
  }

  private List<Node.Entry> noList(Node.Entry entry, String wanted) {
    wrongShape(entry, wanted);
    return List.of();
  }

  public Optional<Boolean> yesNo(Optional<Node.Entry> entry) {
    return entry
        .flatMap(it -> scalar(it, "yes or no"))
        .flatMap(
            it ->
                switch (it.text().strip().toLowerCase(Locale.ROOT)) {
                  case "yes", "true" -> Optional.of(true);
                  case "no", "false" -> Optional.of(false);
                  default ->
                      refuse(
                          DiagnosticCode.BAD_YES_NO,
                          it,
                          "write yes or no, not " + MessageParts.quoted(it.text()));
                });
  }

  /** Reads a short text by its own reader, and puts its refusal where it belongs. */
  public <T> Optional<T> parsed(
      Optional<Node.Entry> entry,
      DiagnosticCode code,
      String wanted,
      Function<String, Parsed<T>> reader) {
    return entry.flatMap(it -> scalar(it, wanted)).flatMap(it -> parsed(it, code, reader));
  }

  public <T> Optional<T> parsed(
      Node.Scalar text, DiagnosticCode code, Function<String, Parsed<T>> reader) {
    return reader
        .apply(text.text())
        .match(
            Optional::of,
            bad -> {
              problems.add(code, text.part(bad.at(), bad.length()), bad.reason());
              return Optional.empty();
            });
  }

  /** Reads a credit or share: {@code 1/2}, {@code 0.5} or {@code 50 %}, from 0 to 1. */
  public Optional<BigFraction> credit(Optional<Node.Entry> entry) {
    return entry
        .flatMap(it -> scalar(it, "a credit"))
        .flatMap(
            it ->
                NumberReader.fraction(it.text())
                    .filter(value -> value.signum() >= 0 && value.compareTo(BigFraction.ONE) <= 0)
                    .or(
                        () ->
                            refuse(
                                DiagnosticCode.BAD_CREDIT,
                                it,
                                "a credit is from 0 to 1, as 1/2, 0.5 or 50 %, not "
                                    + MessageParts.quoted(it.text()))));
  }

  /** Reads points, in thousandths of a point. */
  public Optional<Long> points(Optional<Node.Entry> entry) {
    return entry.flatMap(it -> scalar(it, "a number of points")).flatMap(this::points);
  }

  private Optional<Long> points(Node.Scalar text) {
    Optional<BigFraction> value =
        text.text().contains("%") ? Optional.empty() : NumberReader.fraction(text.text());
    if (value.isEmpty() || value.get().signum() < 0 || value.get().compareTo(MOST_POINTS) > 0) {
      return refuse(
          DiagnosticCode.BAD_POINTS,
          text,
          "points are a number from 0 to a million, not " + MessageParts.quoted(text.text()));
    }
    BigFraction thousandths = value.get().multiply(THOUSAND);
    if (!thousandths.getDenominator().equals(BigInteger.ONE)) {
      return refuse(
          DiagnosticCode.BAD_POINTS,
          text,
          "points are exact to a thousandth; this is finer: " + text.text());
    }
    return Optional.of(thousandths.longValue());
  }

  /** Reads a share between two bounds, in thousandths. */
  public Optional<Integer> thousandths(
      Optional<Node.Entry> entry, int least, int most, String bounds) {
    return entry
        .flatMap(it -> scalar(it, "a number"))
        .flatMap(
            it ->
                NumberReader.fraction(it.text())
                    .map(value -> value.multiply(THOUSAND))
                    .filter(value -> value.getDenominator().equals(BigInteger.ONE))
                    .filter(value -> value.compareTo(BigFraction.of(least)) >= 0)
                    .filter(value -> value.compareTo(BigFraction.of(most)) <= 0)
                    .map(BigFraction::intValue)
                    .or(
                        () ->
                            refuse(
                                DiagnosticCode.BAD_NUMBER,
                                it,
                                "this is " + bounds + ", not " + MessageParts.quoted(it.text()))));
  }

  /** Reads a whole number, zero or more. */
  public Optional<Long> whole(Optional<Node.Entry> entry, String wanted) {
    return entry.flatMap(it -> scalar(it, wanted)).flatMap(it -> whole(it, wanted));
  }

  public Optional<Long> whole(Node.Scalar text, String wanted) {
    return NumberReader.whole(text.text())
        .or(
            () ->
                refuse(
                    DiagnosticCode.BAD_NUMBER,
                    text,
                    wanted + " is a whole number, not " + MessageParts.quoted(text.text())));
  }

  /** Reads a decimal number between two bounds, included. */
  public Optional<Double> decimal(
      Optional<Node.Entry> entry, double least, double most, String wanted) {
    return entry
        .flatMap(it -> scalar(it, wanted))
        .flatMap(
            it ->
                NumberReader.decimal(it.text())
                    .filter(value -> value >= least && value <= most)
                    .or(
                        () ->
                            refuse(
                                DiagnosticCode.BAD_NUMBER,
                                it,
                                wanted
                                    + " is a number from "
                                    + NumberReader.plain(least)
                                    + " to "
                                    + NumberReader.plain(most)
                                    + ", not "
                                    + MessageParts.quoted(it.text()))));
  }

  public <T> Optional<T> refuse(DiagnosticCode code, Node.Scalar text, String message) {
    problems.add(code, text.at(), message);
    return Optional.empty();
  }
}
