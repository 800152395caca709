package assize.date;

import assize.text.Parsed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads whole EDTF texts: a date, an interval of two, or a set of several. */
final class EdtfReader {
  private static final String OPEN = "..";

  private EdtfReader() {}

  static Parsed<Edtf> read(String text) {
    Optional<Parsed<Edtf>> refusal = EdtfHints.refusal(text).map(bad -> bad.<Edtf>as());
    if (refusal.isPresent()) {
      return refusal.get();
    }
    if (text.startsWith("[") || text.startsWith("{")) {
      return set(text);
    }
    int slash = text.indexOf('/');
    return slash >= 0
        ? interval(text, slash)
        : EdtfDateReader.dateOrTime(text).map(date -> edtf(text, date, false, false));
  }

  private static Edtf edtf(String text, EdtfDate date, boolean unknownStart, boolean unknownEnd) {
    return new Edtf(
        text,
        date.widened(),
        date.widened().hull(),
        date.stated().hull(),
        date.uncertain(),
        date.approximate(),
        unknownStart,
        unknownEnd);
  }

  private static Parsed<Edtf> interval(String text, int slash) {
    String start = text.substring(0, slash);
    String end = text.substring(slash + 1);
    int second = end.indexOf('/');
    if (second >= 0) {
      return Parsed.bad("an interval has two dates, so one slash", slash + 1 + second, 1);
    }
    if (start.isEmpty() && end.isEmpty()) {
      return Parsed.bad("a date is missing on either side of the slash", 0, 1);
    }
    return end(start, 0)
        .then(
            from ->
                end(end, slash + 1)
                    .then(to -> range(from, to, 0, text.length(), "interval"))
                    .map(date -> edtf(text, date, start.isEmpty(), end.isEmpty())));
  }

  private static Parsed<EdtfDate> end(String text, int at) {
    return text.isEmpty() || text.equals(OPEN)
        ? Parsed.ok(EdtfDate.ANY)
        : EdtfDateReader.date(text).match(Parsed::ok, bad -> bad.<EdtfDate>within(at));
  }

  private static Parsed<EdtfDate> range(
      EdtfDate from, EdtfDate to, int at, int length, String name) {
    return to.stated().hull().last().isBefore(from.stated().hull().first())
        ? Parsed.bad("the " + name + " ends before it begins", at, length)
        : Parsed.ok(from.to(to));
  }

  private static Parsed<Edtf> set(String text) {
    char close = text.charAt(0) == '[' ? ']' : '}';
    int end = text.length() - 1;
    if (text.charAt(end) != close) {
      return Parsed.bad("a set that begins with " + text.charAt(0) + " ends with " + close, end, 1);
    }
    List<EdtfDate> members = new ArrayList<>();
    int at = 1;
    while (at <= end) {
      int comma = text.indexOf(',', at);
      int stop = comma < 0 ? end : comma;
      Parsed<EdtfDate> member = member(text.substring(at, stop), at, at == 1, stop == end);
      Optional<Parsed<Edtf>> refusal =
          member.match(
              date -> {
                members.add(date);
                return Optional.empty();
              },
              bad -> Optional.of(bad.<Edtf>as()));
      if (refusal.isPresent()) {
        return refusal.get();
      }
      at = stop + 1;
    }
    return Parsed.ok(edtf(text, EdtfDate.union(members), false, false));
  }

  private static Parsed<EdtfDate> member(String text, int at, boolean first, boolean last) {
    int dots = text.indexOf(OPEN);
    if (text.isEmpty() || text.equals(OPEN)) {
      return Parsed.bad("a date is missing in the set", at, text.length());
    }
    if (dots < 0) {
      return end(text, at);
    }
    String end = text.substring(dots + OPEN.length());
    if ((dots == 0 && !first) || (end.isEmpty() && !last)) {
      return Parsed.bad("only the first or the last of a set can be open", at + dots, 2);
    }
    return end(text.substring(0, dots), at)
        .then(
            from ->
                end(end, at + dots + OPEN.length())
                    .then(to -> range(from, to, at, text.length(), "range")));
  }
}
