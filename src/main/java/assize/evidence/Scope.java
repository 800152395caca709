package assize.evidence;

import assize.date.DateRange;
import assize.date.DateRangeSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** For which vehicles an item applies or a claim speaks; parts combine by Kleene's strong logic. */
public sealed interface Scope {

  /** Every vehicle. */
  Scope EVERY = new All(List.of());

  /** Says whether a vehicle is within. */
  Ternary holds(Facts facts);

  /** Returns every span of build days that the answer depends on. */
  default Stream<DateRange> buildDays() {
    return Stream.empty();
  }

  /** Answers for each kind. */
  <R> R match(Cases<R> cases);

  /** Returns what of it a vehicle's facts leave open; itself where it has no parts. */
  default Scope open(Facts facts) {
    return this;
  }

  private static List<Scope> open(List<Scope> parts, Facts facts) {
    return parts.stream()
        .filter(part -> part.holds(facts) == Ternary.UNKNOWN)
        .map(part -> part.open(facts))
        .toList();
  }

  /** What is known of a vehicle, as far as scopes ask. */
  interface Facts {
    Ternary isModel(Set<String> models);

    Ternary isBuilt(DateRangeSet days);

    Ternary hasNumber(String table, String from, String to);

    Ternary hasEquipment(String equipment);

    Ternary isForMarket(Set<String> markets);

    Ternary isFromPlant(Set<String> plants);
  }

  /** Holds where every part holds; of no parts, it holds. */
  record All(List<Scope> parts) implements Scope {
    public All {
      parts = List.copyOf(parts);
    }

    @Override
    public Ternary holds(Facts facts) {
      Ternary all = Ternary.YES;
      for (int i = 0; i < parts.size() && all != Ternary.NO; i++) {
        all = all.and(parts.get(i).holds(facts));
      }
      return all;
    }

    @Override
    public Stream<DateRange> buildDays() {
      return parts.stream().flatMap(Scope::buildDays);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.all(this);
    }

    @Override
    public Scope open(Facts facts) {
      return new All(Scope.open(parts, facts));
    }
  }

  /** Holds where a part holds; of no parts, it does not. */
  record Any(List<Scope> parts) implements Scope {
    public Any {
      parts = List.copyOf(parts);
    }

    @Override
    public Ternary holds(Facts facts) {
      Ternary any = Ternary.NO;
      for (int i = 0; i < parts.size() && any != Ternary.YES; i++) {
        any = any.or(parts.get(i).holds(facts));
      }
      return any;
    }

    @Override
    public Stream<DateRange> buildDays() {
      return parts.stream().flatMap(Scope::buildDays);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.any(this);
    }

    @Override
    public Scope open(Facts facts) {
      return new Any(Scope.open(parts, facts));
    }
  }

  /** Holds where its part does not. */
  record Not(Scope part) implements Scope {
    @Override
    public Ternary holds(Facts facts) {
      return part.holds(facts).not();
    }

    @Override
    public Stream<DateRange> buildDays() {
      return part.buildDays();
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.not(this);
    }

    @Override
    public Scope open(Facts facts) {
      return new Not(part.open(facts));
    }
  }

  /** One of these models. */
  record Models(Set<String> models) implements Scope {
    public Models {
      models = Set.copyOf(models);
    }

    @Override
    public Ternary holds(Facts facts) {
      return facts.isModel(models);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.models(this);
    }
  }

  /** Built on one of these days. */
  record Built(DateRangeSet days) implements Scope {
    @Override
    public Ternary holds(Facts facts) {
      return facts.isBuilt(days);
    }

    @Override
    public Stream<DateRange> buildDays() {
      return days.spans().stream();
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.built(this);
    }
  }

  /** A number of one table, from one to another, both included. */
  record Numbers(String table, String from, String to) implements Scope {
    @Override
    public Ternary holds(Facts facts) {
      return facts.hasNumber(table, from, to);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.numbers(this);
    }
  }

  /** Fitted with this equipment. */
  record Equipment(String equipment) implements Scope {
    @Override
    public Ternary holds(Facts facts) {
      return facts.hasEquipment(equipment);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.equipment(this);
    }
  }

  /** Built for one of these markets. */
  record Markets(Set<String> markets) implements Scope {
    public Markets {
      markets = Set.copyOf(markets);
    }

    @Override
    public Ternary holds(Facts facts) {
      return facts.isForMarket(markets);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.markets(this);
    }
  }

  /** Built at one of these plants. */
  record Plants(Set<String> plants) implements Scope {
    public Plants {
      plants = Set.copyOf(plants);
    }

    @Override
    public Ternary holds(Facts facts) {
      return facts.isFromPlant(plants);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.plants(this);
    }
  }

  /** One answer for each kind of scope. */
  interface Cases<R> {
    R all(All scope);

    R any(Any scope);

    R not(Not scope);

    R models(Models scope);

    R built(Built scope);

    R numbers(Numbers scope);

    R equipment(Equipment scope);

    R markets(Markets scope);

    R plants(Plants scope);
  }
}
