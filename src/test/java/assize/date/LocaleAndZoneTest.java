package assize.date;

import java.util.Locale;
import java.util.TimeZone;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Nested;

/** Everything once more on a machine set to Turkish, a day ahead of most others. */
class LocaleAndZoneTest {
  private static final Locale LOCALE = Locale.getDefault();
  private static final TimeZone ZONE = TimeZone.getDefault();

  @BeforeAll
  static void travel() {
    Locale.setDefault(Locale.forLanguageTag("tr-TR"));
    TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
  }

  @AfterAll
  static void comeHome() {
    Locale.setDefault(LOCALE);
    TimeZone.setDefault(ZONE);
  }

  @Nested
  class Specification extends EdtfSpecificationTest {}

  @Nested
  class Dates extends EdtfTest {}

  @Nested
  class LeadTimes extends LeadTimeTest {}

  @Nested
  class Codes extends DateCodeResolverTest {}

  @Nested
  class Days extends DateRangeSetTest {}
}
