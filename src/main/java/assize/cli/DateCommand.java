package assize.cli;

import assize.date.DateRange;
import assize.date.DateRangeFormatter;
import assize.date.Edtf;
import assize.text.Json;
import assize.text.Parsed;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says which days a date covers. */
@Command(
    name = "date",
    description = "Says which days a date covers (EDTF, ISO 8601-2).",
    mixinStandardHelpOptions = true)
final class DateCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(arity = "1..*", paramLabel = "DATE", description = "For example 1934-06~ or 1934/..")
  private List<String> dates = List.of();

  @Option(names = "--json", description = "One JSON object a line.")
  private boolean json;

  DateCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    boolean allRead = true;
    for (String text : dates) {
      Parsed<Edtf> read = Edtf.parse(text);
      allRead &= read.toOptional().isPresent();
      if (json) {
        terminal.result(read.match(DateCommand::asJson, DateCommand::errorJson));
      } else {
        read.match(
            date -> {
              terminal.result(text + ": " + words(date));
              return true;
            },
            bad -> {
              terminal.error(text + ": " + bad.reason());
              return false;
            });
      }
    }
    return allRead ? Exit.DONE : Exit.BAD_INPUT;
  }

  static <T> String errorJson(Parsed.Bad<T> bad) {
    return Json.object().text("error", bad.reason()).toString();
  }

  private static String asJson(Edtf date) {
    DateRange span = date.span();
    return Json.object()
        .orNull("first", iso(span.first(), span.openStart()))
        .orNull("last", iso(span.last(), span.openEnd()))
        .flag("open_start", span.openStart())
        .flag("open_end", span.openEnd())
        .flag("uncertain", date.uncertain())
        .flag("approximate", date.approximate())
        .toString();
  }

  private static Optional<String> iso(LocalDate day, boolean open) {
    return open ? Optional.empty() : Optional.of(DateRangeFormatter.iso(day));
  }

  private static String words(Edtf date) {
    String words = DateRangeFormatter.of(date.span());
    if (date.approximate()) {
      words += ", about: widened from " + DateRangeFormatter.of(date.stated());
    }
    return words + (date.uncertain() ? ", uncertain" : "");
  }
}
