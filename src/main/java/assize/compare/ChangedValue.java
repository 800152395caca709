package assize.compare;

import assize.aspect.Aspect;
import assize.date.DateRange;
import assize.evidence.Claim;
import assize.evidence.Scope;
import assize.ruleset.Item;
import org.apache.commons.numbers.fraction.BigFraction;

/** Something that a rule set says, before or after a change. */
public sealed interface ChangedValue {

  /** Answers for each kind. */
  <R> R match(Cases<R> cases);

  /** Text as written. */
  record Words(String text) implements ChangedValue {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.words(this);
    }
  }

  /** Points or a weight, in thousandths. */
  record Points(long thousandths) implements ChangedValue {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.points(this);
    }
  }

  /** A credit or share. */
  record Share(BigFraction share) implements ChangedValue {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.share(this);
    }
  }

  /** Days. */
  record Days(DateRange days) implements ChangedValue {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.days(this);
    }
  }

  /** For which vehicles. */
  record Where(Scope scope) implements ChangedValue {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.where(this);
    }
  }

  /** What a source says of an aspect of an item. */
  record ClaimValue(Item item, Aspect aspect, Claim claim) implements ChangedValue {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.said(this);
    }
  }

  /** One answer for each kind of value. */
  interface Cases<R> {
    R words(Words value);

    R points(Points value);

    R share(Share value);

    R days(Days value);

    R where(Where value);

    R said(ClaimValue value);
  }
}
