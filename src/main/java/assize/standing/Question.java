package assize.standing;

/** Something about a vehicle, other than its build day, that sources ask for. */
public sealed interface Question {

  /** Answers for each kind. */
  <R> R match(Cases<R> cases);

  /** Which model it is; the answers are names of models. */
  record OfModel() implements Question {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.ofModel(this);
    }
  }

  /** Which market it was built for; the answers are names of markets. */
  record OfMarket() implements Question {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.ofMarket(this);
    }
  }

  /** Which works it was built at; the answers are names of plants. */
  record OfPlant() implements Question {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.ofPlant(this);
    }
  }

  /** Whether it has some equipment; the answers are {@code yes} and {@code no}. */
  record OfEquipment(String equipment) implements Question {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.ofEquipment(this);
    }
  }

  /**
   * Between which numbers of a table its own stands; an answer is the ranges that hold it, each as
   * {@code X-1..X-9}, with commas between; empty for none of them.
   */
  record OfNumber(String table) implements Question {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.ofNumber(this);
    }
  }

  /** One answer for each kind of question. */
  interface Cases<R> {
    R ofModel(OfModel question);

    R ofMarket(OfMarket question);

    R ofPlant(OfPlant question);

    R ofEquipment(OfEquipment question);

    R ofNumber(OfNumber question);
  }
}
