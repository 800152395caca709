package assize.ruleset;

import assize.aspect.ColorChip;
import assize.aspect.Finish;
import assize.aspect.Lexicon;
import assize.aspect.Origin;
import assize.date.Edtf;
import assize.diagnostic.Accepted;
import assize.evidence.Source;
import assize.text.Fingerprint;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * One edition of one standard. Maps keep the order in which the person wrote them.
 *
 * @param plants names by id; so are markets, equipment and materials
 * @param origins the credit of each origin, 0 to 1; one that is missing is worth 0
 * @param conditions the ladder of conditions with their credits, the best first
 * @param files every file it was read from
 * @param accepted doubts that its keepers let stand
 * @param defined where it is written
 */
public record RuleSet(
    String id,
    String name,
    String edition,
    Optional<Edtf> issued,
    Optional<String> maker,
    Optional<String> purpose,
    Optional<String> notes,
    Scale scale,
    List<Award> awards,
    Map<String, Model> models,
    Map<String, String> plants,
    Map<String, String> markets,
    Map<String, String> equipment,
    Map<String, NumberTable> numbers,
    Map<String, Source> sources,
    Map<String, ColorChip> colors,
    Map<String, Finish> finishes,
    Map<String, String> materials,
    Map<Origin, BigFraction> origins,
    Map<String, BigFraction> conditions,
    List<Area> areas,
    List<Fingerprint> files,
    List<Accepted> accepted,
    Defined defined)
    implements Lexicon {
  public RuleSet {
    awards = List.copyOf(awards);
    models = ordered(models);
    plants = ordered(plants);
    markets = ordered(markets);
    equipment = ordered(equipment);
    numbers = ordered(numbers);
    sources = ordered(sources);
    colors = ordered(colors);
    finishes = ordered(finishes);
    materials = ordered(materials);
    origins = ordered(origins);
    conditions = ordered(conditions);
    areas = List.copyOf(areas);
    files = List.copyOf(files);
    accepted = List.copyOf(accepted);
  }

  private static <K, V> Map<K, V> ordered(Map<K, V> map) {
    return Collections.unmodifiableMap(new LinkedHashMap<>(map));
  }

  /** Returns every item, in the order of the areas. */
  public Stream<Item> items() {
    return areas.stream().flatMap(area -> area.items().stream());
  }

  @Override
  public String title(String item) {
    return item(item).map(Item::title).orElse(item);
  }

  @Override
  public Map<String, String> choices(String item) {
    return item(item).map(Item::choices).orElse(Map.of());
  }

  private Optional<Item> item(String id) {
    return items().filter(it -> it.id().equals(id)).findFirst();
  }

  @Override
  public boolean isKindOf(String finish, String expected) {
    Optional<String> at = Optional.of(finish);
    for (int steps = 0; at.isPresent() && steps <= finishes.size(); steps++) {
      if (at.get().equals(expected)) {
        return true;
      }
      at = Optional.ofNullable(finishes.get(at.get())).flatMap(Finish::kindOf);
    }
    return false;
  }
}
