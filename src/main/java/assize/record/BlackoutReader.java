package assize.record;

import assize.diagnostic.DiagnosticCode;
import assize.schema.MappingReader;
import assize.schema.ObjectSchema;
import assize.schema.PropertySchema;
import assize.schema.ScalarFormat;
import assize.schema.ScalarReader;
import assize.yaml.MessageParts;
import assize.yaml.Node;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads the parts of a photo that are painted over in the copy for others. */
final class BlackoutReader {
  /** How many parts of one photo can be covered. */
  static final int MOST = 50;

  static final ObjectSchema COVER =
      ObjectSchema.of(
          "a part of a photo",
          PropertySchema.need(
              "left", ScalarFormat.percent(), "Where it begins, from the left edge, in percent."),
          PropertySchema.need(
              "top", ScalarFormat.percent(), "Where it begins, from the upper edge, in percent."),
          PropertySchema.need(
              "width", ScalarFormat.percent(), "How wide it is, in percent of the photo."),
          PropertySchema.need(
              "height", ScalarFormat.percent(), "How high it is, in percent of the photo."));

  private static final Pattern PERCENT = Pattern.compile("[0-9]{1,3}(?:\\.[0-9]{1,2})?\\s*%?");

  private final ScalarReader values;

  BlackoutReader(ScalarReader values) {
    this.values = values;
  }

  /** Reads the parts of one piece of evidence; only a photo can have some. */
  List<BlackoutArea> read(Optional<Node.Entry> entry, Optional<EvidenceItem.Kind> kind) {
    if (entry.isEmpty()) {
      return List.of();
    }
    if (kind.isPresent() && kind.get() != EvidenceItem.Kind.PHOTO) {
      bad(entry.get(), "only a photo can be covered, not a " + kind.get().word());
      return List.of();
    }
    List<Node.Entry> each = values.oneOrMore(entry);
    if (each.size() > MOST) {
      bad(
          each.get(MOST),
          "at most " + MOST + " parts of a photo can be covered",
          "cover larger parts, or mark the photo `private: yes`");
      return List.of();
    }
    return each.stream().flatMap(one -> cover(one).stream()).toList();
  }

  private Optional<BlackoutArea> cover(Node.Entry entry) {
    Optional<Node.Mapping> mapping =
        values.mapping(entry, "a part of the photo, as {left: 12 %, top: 40 %, ...}");
    if (mapping.isEmpty()) {
      return Optional.empty();
    }
    MappingReader fields = values.fields(mapping.get(), COVER, mapping.get().at().part(0, 1));
    Optional<Integer> left = percent(fields.get("left"), 0);
    Optional<Integer> top = percent(fields.get("top"), 0);
    Optional<Integer> width = percent(fields.get("width"), 1);
    Optional<Integer> height = percent(fields.get("height"), 1);
    fields.done();
    if (left.isEmpty() || top.isEmpty() || width.isEmpty() || height.isEmpty()) {
      return Optional.empty();
    }
    boolean wide = reaches(fields, "width", "right", left.get(), width.get());
    boolean high = reaches(fields, "height", "lower", top.get(), height.get());
    return wide || high
        ? Optional.empty()
        : Optional.of(new BlackoutArea(left.get(), top.get(), width.get(), height.get()));
  }

  private boolean reaches(MappingReader fields, String name, String edge, int from, int length) {
    boolean reaches = from + length > BlackoutArea.WHOLE;
    if (reaches) {
      bad(
          fields.get(name).orElseThrow(),
          "this reaches "
              + shown(from + length - BlackoutArea.WHOLE)
              + " % past the "
              + edge
              + " edge of the photo",
          "write at most " + shown(BlackoutArea.WHOLE - from) + " %");
    }
    return reaches;
  }

  /** Reads a share of a photo, in hundredths of a percent. */
  private Optional<Integer> percent(Optional<Node.Entry> entry, int least) {
    Optional<Node.Scalar> text = entry.flatMap(it -> values.scalar(it, "a share of the photo"));
    if (text.isEmpty()) {
      return Optional.empty();
    }
    String written = text.get().text().strip();
    Optional<Integer> share =
        PERCENT.matcher(written).matches()
            ? Optional.of(hundredths(written)).filter(it -> it >= least && it <= BlackoutArea.WHOLE)
            : Optional.empty();
    if (share.isEmpty()) {
      bad(
          entry.orElseThrow(),
          "a share of the photo is from "
              + (least == 0 ? "0" : "0.01")
              + " to 100 %, to two decimals, not "
              + MessageParts.quoted(written));
    }
    return share;
  }

  private static int hundredths(String written) {
    return new BigDecimal(written.replace("%", "").strip()).movePointRight(2).intValueExact();
  }

  private static String shown(int hundredths) {
    return BigDecimal.valueOf(hundredths, 2).stripTrailingZeros().toPlainString();
  }

  private void bad(Node.Entry entry, String message) {
    values.problems().add(DiagnosticCode.BAD_BLACKOUT_AREA, entry.at(), message);
  }

  private void bad(Node.Entry entry, String message, String hint) {
    values.problems().add(DiagnosticCode.BAD_BLACKOUT_AREA, entry.at(), message, hint);
  }
}
