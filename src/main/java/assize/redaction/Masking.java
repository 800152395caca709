package assize.redaction;

import static java.util.stream.Collectors.joining;

import assize.aspect.Aspect;
import assize.aspect.PartNumbers;
import assize.judge.Judge;
import assize.pattern.NumberPattern;
import assize.record.VehicleRecord;
import assize.ruleset.NumberTable;
import assize.ruleset.RuleSet;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Takes a record's numbers out of it before a copy for others is judged and made, so that nothing
 * that comes after knows them.
 *
 * <p>In the record's texts they are masked. What follows from a number is judged by what all the
 * numbers have in common that it can't be told from. The standard's own words are left alone: they
 * are the same for every vehicle, and a masked number among them would say which it is.
 */
public final class Masking {
  /** A number with fewer letters and digits may stand anywhere by chance. */
  private static final int TELLING = 5;

  private final VehicleRecord vehicle;
  private final RuleSet rules;
  private Optional<List<String>> telling = Optional.empty();
  private final List<Hidden> numbers = new ArrayList<>();
  private final Set<String> leftOut = new LinkedHashSet<>();
  private final Map<String, String> keys = new HashMap<>();
  private final TextMasker mask;
  private final MaskCounts times;
  private final VehicleRecord masked;

  private Masking(Judge judge, RuleSet rules, VehicleRecord vehicle) {
    this.vehicle = vehicle;
    this.rules = rules;
    vehicle
        .numbers()
        .forEach(
            (table, number) -> {
              NumberTable known =
                  Optional.ofNullable(rules.numberTables().get(table))
                      .orElseGet(() -> NumberTable.of(table, table));
              Reading reading = new Reading(without(number));
              RecordTexts.of(vehicle, vehicle.numbers(), Map.of(), reading);
              List<Stamp> stamps = reading.stamps.stream().filter(it -> it.has(number)).toList();
              numbers.add(hide(judge, rules, known, number, new Seen(reading.seen), stamps));
            });
    this.mask = TextMasker.showing(numbers.stream().map(Hidden::showing).toList(), List.of());
    this.times = new MaskCounts();
    Map<String, String> shown = new LinkedHashMap<>();
    Map<String, List<String>> oneOf = new LinkedHashMap<>();
    for (Hidden one : numbers) {
      times.add(shown.size(), 1);
      shown.put(one.table(), one.masked());
      oneOf.put(one.table(), one.oneOf());
    }
    this.masked = RecordTexts.of(vehicle, shown, oneOf, new Writing());
  }

  /**
   * Takes the numbers of a record out of it.
   *
   * @param judge judges by the rule set
   */
  public static Masking of(Judge judge, RuleSet rules, VehicleRecord vehicle) {
    return new Masking(judge, rules, vehicle);
  }

  /** Returns the record without its numbers. */
  public VehicleRecord record() {
    return masked;
  }

  /** Returns its numbers, in its order. */
  public List<Hidden> numbers() {
    return List.copyOf(numbers);
  }

  /** Returns the items on which a number is stamped that the verdict would give away, in order. */
  public List<String> leftOut() {
    return List.copyOf(leftOut);
  }

  /** Returns what the masked record calls a piece of evidence. */
  public String key(String evidence) {
    return keys.getOrDefault(evidence, evidence);
  }

  /** Returns the mask of its numbers alone. */
  public TextMasker mask() {
    return mask;
  }

  /**
   * Returns a text with whole numbers masked, as far as they can't be taken for anything else. The
   * standard's own words stay as they are.
   */
  public String whole(String text) {
    String folded = NormalizedText.of(text).toString();
    return telling().stream().anyMatch(folded::contains) ? mask.text(text) : text;
  }

  /** Returns the numbers with letters in them that the standard does not name. */
  private List<String> telling() {
    if (telling.isEmpty()) {
      String standard = NormalizedText.of(rules.toString()).toString();
      telling = Optional.of(telling(standard));
    }
    return telling.get();
  }

  private List<String> telling(String standard) {
    return vehicle.numbers().values().stream()
        .map(it -> NormalizedText.of(it).toString())
        .filter(it -> it.length() >= TELLING && it.chars().anyMatch(c -> c < '0' || c > '9'))
        .filter(it -> !standard.contains(it))
        .toList();
  }

  /** Returns how often each number was masked. */
  public MaskCounts times() {
    return times;
  }

  /** Returns what masks the private words in what is made of the masked record. */
  public TextMasker ofWords() {
    Map<String, String> standIns = new LinkedHashMap<>();
    for (Hidden one : numbers) {
      one.standIn().ifPresent(it -> standIns.put(PartNumbers.Found.masking(it), one.masked()));
    }
    return TextMasker.of(standIns, vehicle.unsharedWords());
  }

  /** Returns a mask that shows nothing of one number, and of the others what may be shown. */
  private TextMasker without(String number) {
    List<Showing> shown =
        vehicle.numbers().values().stream()
            .map(it -> it.equals(number) ? Showing.beginning(it, 0) : Showing.most(it))
            .toList();
    return TextMasker.showing(shown, List.of());
  }

  private static Hidden hide(
      Judge judge, RuleSet rules, NumberTable table, String number, Seen seen, List<Stamp> stamps) {
    Lookalikes lookalikes = new Lookalikes(judge, table, number, seen);
    if (stamps.isEmpty()) {
      return lookalikes.hidden();
    }
    if (stamps.stream().anyMatch(it -> !it.aspect().equals(Aspect.PART_NUMBER.word()))) {
      return lookalikes.hidden().withoutStandIn();
    }
    List<NumberPattern> expected = stamps.stream().flatMap(it -> it.expected(rules)).toList();
    return lookalikes.stamped(
        other -> expected.stream().map(it -> it.fits(other) ? "1" : "0").collect(joining()));
  }

  private boolean isWord(String text) {
    return text.equals(rules.edition()) || rules.scale().allowances().containsKey(text);
  }

  /** A number that is stamped on an item too. */
  private record Stamp(String item, String aspect, String text) {
    boolean has(String number) {
      return NormalizedText.of(text).toString().equals(NormalizedText.of(number).toString());
    }

    /** Returns the numbers that any claim holds to be right there. */
    Stream<NumberPattern> expected(RuleSet rules) {
      return rules
          .items()
          .filter(it -> it.id().equals(item))
          .flatMap(it -> it.aspects().stream())
          .filter(rule -> rule.aspect().word().equals(aspect))
          .flatMap(rule -> rule.claims().stream())
          .flatMap(claim -> claim.values().stream())
          .filter(PartNumbers.Right.class::isInstance)
          .map(value -> ((PartNumbers.Right) value).number());
    }
  }

  /** Gathers what stands in the open, and where the numbers are stamped. */
  private static final class Reading implements RecordTexts.Changes {
    private final TextMasker mask;
    private final List<String> seen = new ArrayList<>();
    private final List<Stamp> stamps = new ArrayList<>();

    Reading(TextMasker mask) {
      this.mask = mask;
    }

    @Override
    public String text(String item, String text) {
      seen.add(mask.text(text));
      return text;
    }

    /** The same whichever number it is. */
    @Override
    public String word(String item, String text) {
      return text;
    }

    @Override
    public Optional<String> stamped(String item, String aspect, String text) {
      stamps.add(new Stamp(item, aspect, text));
      return Optional.of(text(item, text));
    }
  }

  /** Masks the numbers in each text. */
  private final class Writing implements RecordTexts.Changes {
    private final Set<String> taken = new HashSet<>();

    @Override
    public String text(String item, String text) {
      return mask.text(text, times);
    }

    @Override
    public String word(String item, String text) {
      return isWord(text) ? text : text(item, text);
    }

    @Override
    public String key(String key) {
      return keys.computeIfAbsent(key, this::free);
    }

    private String free(String key) {
      String wanted = text("", key);
      String free = wanted;
      for (int i = 2; !taken.add(free); i++) {
        free = wanted + "." + i;
      }
      return free;
    }

    /** A number by itself gives way to its stand-in; a text that has one within can't be judged. */
    @Override
    public Optional<String> stamped(String item, String aspect, String text) {
      Stamp stamp = new Stamp(item, aspect, text);
      Optional<Hidden> whole =
          numbers.stream().filter(it -> stamp.has(it.showing().number())).findFirst();
      if (whole.isPresent()) {
        times.add(numbers.indexOf(whole.get()), 1);
        if (whole.get().standIn().isEmpty()) {
          leftOut.add(item);
        }
        return whole.get().standIn().map(PartNumbers.Found::masking);
      }
      if (mask.text(text, times).equals(text)) {
        return Optional.of(text(item, text));
      }
      leftOut.add(item);
      return Optional.empty();
    }
  }
}
