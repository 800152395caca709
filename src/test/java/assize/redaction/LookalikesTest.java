package assize.redaction;

import static org.assertj.core.api.Assertions.assertThat;

import assize.judge.Judge;
import assize.judge.NumberDating;
import assize.judgment.Judgment;
import assize.record.Named;
import assize.record.RecordReader;
import assize.record.VehicleRecord;
import assize.report.dossier.DossierViewFactory;
import assize.report.html.PageImage;
import assize.report.redacted.RedactionsViewFactory;
import assize.report.text.JudgmentJson;
import assize.report.vehicle.HtmlReport;
import assize.ruleset.NumberTable;
import assize.ruleset.NumberTable.Series;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The attack on copies: somebody has the standard, the program and a copy, knows all else that the
 * record says, and tries every number of the series. At least as many numbers as the copy says give
 * the very same copy.
 */
@Tag("slow")
class LookalikesTest {
  /** The demonstration's own records, with all that they say; of engines every tenth is tried. */
  @ParameterizedTest
  @CsvSource({
    "l45-4388, chassis, L45-4388, 1",
    "q-1187, frame, D 1187, 1",
    "l41-half-recorded, chassis, L41-3702, 1",
    "l45-4388, engine, E 20874, 10",
    "q-1187, engine, M 5810, 10",
  })
  void tryingEveryNumberLeavesAsManyAsTheCopySays(
      String record, String table, String number, int step) {
    attack(new Attack(record, table, whole -> whole), number, step);
  }

  /** The same vehicles before anything was found on them, with numbers at the edges of a table. */
  @ParameterizedTest
  @CsvSource({
    // stands where a condition of the standard begins, and in its text
    "l45-4388, chassis, L45-4160",
    // one of six that were set aside
    "l45-4388, chassis, L45-4503",
    // the first and the last of the series
    "l45-4388, chassis, L45-4001",
    "l45-4388, chassis, L45-5187",
    // few have as many digits
    "l41-half-recorded, chassis, L42-1002",
    "l41-half-recorded, chassis, L41H-7",
    "l45-4388, engine, E 12 X",
    "q-1187, frame, C 45 S",
    // a year
    "l41-half-recorded, chassis, L41-1934",
  })
  void numbersAtTheEdgesOfATableAreNoEasierToFind(String record, String table, String number) {
    attack(new Attack(record, table, Attack::bare), number, 1);
  }

  private static void attack(Attack attack, String number, int step) {
    Masking own = attack.masking(number);
    Hidden hidden =
        own.numbers().get(List.copyOf(attack.vehicle.numbers().keySet()).indexOf(attack.table));
    int count = hidden.count().orElseThrow();
    assertThat(count).isGreaterThanOrEqualTo(Lookalikes.LEAST);
    List<String> left = new ArrayList<>();
    List<String> all = attack.everyNumber(number);
    for (int i = 0; i < all.size(); i += step) {
      String other = all.get(i);
      // Masked otherwise it gives another copy; this is only quicker to see.
      boolean plain = hidden.showing().letters().isEmpty();
      if (plain && !Showing.most(other).masked().equals(hidden.masked())) {
        continue;
      }
      if (attack.isAlike(own, attack.masking(other))) {
        left.add(other);
      }
    }
    assertThat(left).hasSizeGreaterThanOrEqualTo(count / step);
    List<String> told = attack.told(number);
    for (int i = 0; i < left.size(); i += left.size() / 4) {
      assertThat(attack.told(left.get(i))).as(left.get(i)).isEqualTo(told);
    }
  }

  /** One vehicle whose owner has another number. */
  private static final class Attack {
    private final RuleSet rules;
    private final Judge judge;
    private final VehicleRecord vehicle;
    private final String table;
    private final String own;

    Attack(String record, String table, UnaryOperator<VehicleRecord> kept) {
      Path file = Path.of("rules", record + ".yaml");
      this.rules =
          RuleSetReader.read(RecordReader.rulesOf(file).value().orElseThrow())
              .value()
              .orElseThrow();
      this.judge = Judge.by(rules);
      this.table = table;
      this.vehicle = kept.apply(RecordReader.read(file, rules).value().orElseThrow());
      this.own = String.valueOf(vehicle.numbers().get(table));
    }

    static VehicleRecord bare(VehicleRecord one) {
      return VehicleRecord.of(one.id(), one.rules(), one.name())
          .with(VehicleRecord.EDITION, one.edition())
          .with(Named.MODEL, one.model())
          .with(Named.NOTES, one.notes())
          .with(VehicleRecord.NUMBERS, one.numbers())
          .with(VehicleRecord.MARKET, one.market())
          .with(VehicleRecord.FILES, one.files());
    }

    Masking masking(String number) {
      return Masking.of(judge, rules, with(number));
    }

    /** Says whether nothing that a copy is made of tells two numbers apart. */
    boolean isAlike(Masking one, Masking other) {
      return one.record().equals(other.record())
          && one.leftOut().equals(other.leftOut())
          && shown(one).equals(shown(other));
    }

    private static List<String> shown(Masking masking) {
      return IntStream.range(0, masking.numbers().size())
          .mapToObj(
              i ->
                  masking.numbers().get(i).masked()
                      + masking.numbers().get(i).count()
                      + masking.times().of(i))
          .toList();
    }

    /** Returns the record with another number in place of its own, wherever that is written. */
    private VehicleRecord with(String number) {
      Map<String, String> numbers = new LinkedHashMap<>(vehicle.numbers());
      numbers.put(table, number);
      UnaryOperator<String> change = text -> swapped(text, number);
      return RecordTexts.of(
          vehicle,
          numbers,
          Map.of(),
          new RecordTexts.Changes() {
            @Override
            public String text(String item, String text) {
              return change.apply(text);
            }

            @Override
            public String key(String key) {
              return change.apply(key);
            }

            @Override
            public Optional<String> stamped(String item, String aspect, String text) {
              return Optional.of(change.apply(text));
            }
          });
    }

    private String swapped(String text, String number) {
      String digits = own.replaceAll(".*\\D", "");
      return text.replace(own, number)
          .replace(own.toLowerCase(java.util.Locale.ROOT), number)
          .replace(digits, number.replaceAll("\\D+$", "").replaceAll(".*\\D", ""));
    }

    /**
     * Returns every number of the same series that the table dates, as its owner would write it.
     */
    List<String> everyNumber(String like) {
      NumberTable numbers = Objects.requireNonNull(rules.numberTables().get(table));
      List<String> all = new ArrayList<>();
      for (Series series : numbers.series()) {
        if (series.numberOf(like).isEmpty()) {
          continue;
        }
        long first = series.firstNumbers().get(0).number();
        long last = series.last().orElseThrow().number();
        for (long number = first; number <= last; number++) {
          String text = series.prefix() + (table.equals("chassis") ? "" : " ") + number;
          text += series.suffix().isEmpty() ? "" : " " + series.suffix();
          if (NumberDating.of(numbers, text).stream().anyMatch(it -> it.days().isPresent())) {
            all.add(text);
          }
        }
      }
      return all;
    }

    /** Returns all that is made for others of the vehicle, were that its number. */
    List<String> told(String number) {
      Judgment judgment = judge.judge(with(number), Optional.empty());
      RedactedJudgment copy = RedactedJudgment.of(judge, judgment, Optional.empty());
      TextMasker words = copy.masking().ofWords();
      RedactionsViewFactory.Shared page = RedactionsViewFactory.of(copy, words, Map.of(), Map.of());
      PageImage picture = new PageImage("data:image/png;base64,AAAA", 1, 1);
      Map<String, PageImage> pictures = new LinkedHashMap<>();
      page.view().evidence().forEach(one -> pictures.put(page.pictures().apply(one.id()), picture));
      List<String> told = new ArrayList<>();
      told.add(HtmlReport.render(page.view(), pictures));
      told.add(JudgmentJson.of(copy.judgment(), words::text));
      told.add(RedactionsViewFactory.entry(copy, words, "").toString());
      for (String item : DossierViewFactory.disputed(copy.judgment())) {
        told.add(
            RedactionsViewFactory.dossier(copy, words, item, Map.of())
                .map(it -> it.view().toString())
                .orElse(""));
      }
      return told;
    }
  }
}
