package assize.production;

/** Something about a vehicle, other than its build day, that scopes ask for. */
public sealed interface VehicleAttribute {

  /** Answers for each kind. */
  <R> R match(Cases<R> cases);

  /** Which model it is. */
  record OfModel() implements VehicleAttribute {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.ofModel(this);
    }
  }

  /** Which market it was built for. */
  record OfMarket() implements VehicleAttribute {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.ofMarket(this);
    }
  }

  /** Which works it was built at. */
  record OfPlant() implements VehicleAttribute {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.ofPlant(this);
    }
  }

  /** Whether it has some equipment. */
  record OfEquipment(String equipment) implements VehicleAttribute {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.ofEquipment(this);
    }
  }

  /** Between which numbers of a table its own stands. */
  record OfNumber(String table) implements VehicleAttribute {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.ofNumber(this);
    }
  }

  /** One answer for each kind of attribute. */
  interface Cases<R> {
    R ofModel(OfModel attribute);

    R ofMarket(OfMarket attribute);

    R ofPlant(OfPlant attribute);

    R ofEquipment(OfEquipment attribute);

    R ofNumber(OfNumber attribute);
  }
}
