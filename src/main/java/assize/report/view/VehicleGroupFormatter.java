package assize.report.view;

import assize.date.DateRangeFormatter;
import assize.evidence.Scope;
import assize.production.AttributeValue;
import assize.production.VehicleAttribute;
import assize.ruleset.NumberTable;
import assize.ruleset.RuleSet;
import assize.timeline.VehicleGroup;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** For which vehicles, in short words: a handbook lists the whole names. */
public final class VehicleGroupFormatter {
  private final RuleSet rules;

  public VehicleGroupFormatter(RuleSet rules) {
    this.rules = rules;
  }

  /** Returns as in "L41 and L45, built until 30 September 1934"; empty for every vehicle. */
  public String of(Scope scope) {
    return scope.equals(Scope.EVERY) ? "" : scope.match(new Words());
  }

  /** Returns vehicles in words; empty for every vehicle. */
  public String of(List<VehicleGroup> vehicles) {
    List<String> each = vehicles.stream().map(this::of).toList();
    return each.contains("") ? "" : String.join("; or ", each);
  }

  private String of(VehicleGroup vehicles) {
    List<String> parts = new ArrayList<>();
    vehicles.values().forEach((attribute, values) -> parts.add(words(attribute, values)));
    return String.join(", ", parts);
  }

  private String words(VehicleAttribute attribute, Set<AttributeValue> values) {
    return attribute.match(
        new VehicleAttribute.Cases<String>() {
          @Override
          public String ofModel(VehicleAttribute.OfModel it) {
            return models(names(values));
          }

          @Override
          public String ofMarket(VehicleAttribute.OfMarket it) {
            return markets(names(values));
          }

          @Override
          public String ofPlant(VehicleAttribute.OfPlant it) {
            return plants(names(values));
          }

          @Override
          public String ofEquipment(VehicleAttribute.OfEquipment it) {
            return equipment(it.equipment(), values.contains(new AttributeValue.Fitted(true)));
          }

          @Override
          public String ofNumber(VehicleAttribute.OfNumber it) {
            return each(values, AttributeValue.Within.class)
                .map(value -> numbers(it.table(), value))
                .collect(Collectors.joining(" or "));
          }
        });
  }

  private static List<String> names(Set<AttributeValue> values) {
    return each(values, AttributeValue.Named.class).map(AttributeValue.Named::id).toList();
  }

  private static <T> Stream<T> each(Set<AttributeValue> values, Class<T> kind) {
    return values.stream().filter(kind::isInstance).map(kind::cast);
  }

  private String models(Collection<String> some) {
    return list(inOrder(rules.models().keySet(), some), "and");
  }

  private String markets(Collection<String> some) {
    return "for " + list(brief(rules.markets(), some), "or");
  }

  private String plants(Collection<String> some) {
    return "from " + list(brief(rules.plants(), some), "or");
  }

  private String equipment(String id, boolean fitted) {
    return (fitted ? "with " : "without ") + brief(rules.equipment(), List.of(id)).get(0);
  }

  private String table(String id) {
    return Optional.ofNullable(rules.numberTables().get(id)).map(NumberTable::name).orElse(id);
  }

  private String numbers(String table, AttributeValue.Within number) {
    return number.ranges().isEmpty()
        ? table(table) + " outside of those ranges"
        : number.ranges().stream()
            .map(range -> range.from() + " to " + range.to())
            .collect(Collectors.joining(", within ", table(table) + " ", ""));
  }

  /** Returns names up to their first comma, where that leaves them apart. */
  private static List<String> brief(Map<String, String> names, Collection<String> some) {
    long heads = names.values().stream().map(VehicleGroupFormatter::head).distinct().count();
    return inOrder(names.keySet(), some).stream()
        .map(id -> names.getOrDefault(id, id))
        .map(name -> heads == names.size() ? head(name) : name)
        .map(name -> "“" + name + "”")
        .toList();
  }

  private static String head(String name) {
    int comma = name.indexOf(',');
    return comma > 0 ? name.substring(0, comma) : name;
  }

  private static List<String> inOrder(Collection<String> order, Collection<String> some) {
    List<String> known = order.stream().filter(some::contains).toList();
    List<String> all = new ArrayList<>(known);
    some.stream().filter(one -> !known.contains(one)).sorted().forEach(all::add);
    return all;
  }

  private static String list(List<String> words, String and) {
    int last = words.size() - 1;
    return last <= 0
        ? String.join("", words)
        : String.join(", ", words.subList(0, last)) + " " + and + " " + words.get(last);
  }

  private final class Words implements Scope.Cases<String> {
    @Override
    public String all(Scope.All scope) {
      return scope.parts().stream().map(part -> part.match(this)).collect(Collectors.joining(", "));
    }

    @Override
    public String any(Scope.Any scope) {
      return scope.parts().stream()
          .map(part -> part.equals(Scope.EVERY) ? "any vehicle" : part.match(this))
          .collect(Collectors.joining("; or "));
    }

    @Override
    public String not(Scope.Not scope) {
      return scope.part() instanceof Scope.Equipment one
          ? equipment(one.equipment(), false)
          : "but not " + scope.part().match(this);
    }

    @Override
    public String models(Scope.Models scope) {
      return VehicleGroupFormatter.this.models(scope.models());
    }

    @Override
    public String built(Scope.Built scope) {
      return "built " + DateRangeFormatter.of(scope.days());
    }

    @Override
    public String numbers(Scope.Numbers scope) {
      return table(scope.table()) + " " + scope.from() + " to " + scope.to();
    }

    @Override
    public String equipment(Scope.Equipment scope) {
      return VehicleGroupFormatter.this.equipment(scope.equipment(), true);
    }

    @Override
    public String markets(Scope.Markets scope) {
      return VehicleGroupFormatter.this.markets(scope.markets());
    }

    @Override
    public String plants(Scope.Plants scope) {
      return VehicleGroupFormatter.this.plants(scope.plants());
    }

    private String equipment(String id, boolean fitted) {
      return VehicleGroupFormatter.this.equipment(id, fitted);
    }
  }
}
