package assize.fuzz;

import assize.date.Edtf;
import assize.date.LeadTime;

/** Dates and spans of time. */
public final class DateTarget {
  private DateTarget() {}

  /** Tries one input. */
  public static void fuzzerTestOneInput(byte[] data) {
    String text = Checks.text(data);
    Checks.parsed(text, Edtf.parse(text), Edtf.parse(text))
        .toOptional()
        .ifPresent(
            date -> {
              Checks.demand(!date.span().first().isAfter(date.span().last()), "first after last");
              Checks.demand(
                  !date.stated().first().isBefore(date.span().first())
                      && !date.stated().last().isAfter(date.span().last()),
                  "stated days that are not among all");
            });
    Checks.parsed(text, LeadTime.parse(text), LeadTime.parse(text));
  }
}
