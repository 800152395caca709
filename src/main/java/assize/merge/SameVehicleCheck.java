package assize.merge;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.pattern.NumberPattern;
import assize.record.Named;
import assize.record.VehicleRecord;
import assize.ruleset.RuleSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Says whether a friend's record is about the same vehicle, by the same edition. */
public record SameVehicleCheck(RuleSet rules, LocatedRecord mine, LocatedRecord theirs) {
  /** The next step for what seems to be about another vehicle. */
  public static final String OTHER_VEHICLE = "with --allow-other-vehicle it is taken all the same";

  /** The next step for what was filled in for another edition. */
  public static final String OTHER_EDITION =
      "look it through again and change its edition, or take it all the same with --allow-other-edition";

  /**
   * Says why a friend's record seems to be about another vehicle. One of the same name is not; nor
   * is one of another name that has a number in common and none that differs.
   */
  public Optional<Diagnostic> otherVehicle() {
    VehicleRecord own = mine.record();
    VehicleRecord told = theirs.record();
    if (own.id().equals(told.id())) {
      return Optional.empty();
    }
    boolean common = false;
    for (Map.Entry<String, String> one : told.numbers().entrySet()) {
      Optional<String> number = Optional.ofNullable(own.numbers().get(one.getKey()));
      boolean isSame = number.filter(it -> fold(it).equals(fold(one.getValue()))).isPresent();
      if (number.isPresent() && !isSame) {
        return Optional.of(
            other(
                "its " + one.getKey() + " number is " + one.getValue() + ", not " + number.get(),
                VehicleRecord.NUMBERS.name(),
                one.getKey()));
      }
      common |= isSame;
    }
    if (own.model().isPresent() && told.model().isPresent() && !own.model().equals(told.model())) {
      return Optional.of(
          other(
              "its model is " + told.model().get() + ", not " + own.model().get(),
              VehicleRecord.VEHICLE.name(),
              Named.MODEL.name()));
    }
    return common
        ? Optional.empty()
        : Optional.of(
            other(
                "it is called \""
                    + told.id()
                    + "\", not \""
                    + own.id()
                    + "\", and has no number in common",
                VehicleRecord.ID.name()));
  }

  private Diagnostic other(String why, String... path) {
    return Diagnostic.of(
            DiagnosticCode.DIFFERENT_VEHICLE,
            theirs.at(List.of(path)),
            "this is a record of another vehicle: " + why,
            OTHER_VEHICLE)
        .with(mine.at(List.of(path)), "the record's own");
  }

  private static String fold(String number) {
    return NumberPattern.fold(number);
  }

  /** Says why a friend's record was filled in for another edition, if it says that it was. */
  public Optional<Diagnostic> otherEdition() {
    String edition = mine.record().edition().orElse(rules.edition());
    return theirs
        .record()
        .edition()
        .filter(it -> !it.equals(edition))
        .map(
            it ->
                Diagnostic.of(
                    DiagnosticCode.DIFFERENT_EDITION,
                    theirs.at(List.of("edition")),
                    "this was filled in for edition \""
                        + it
                        + "\", the record for \""
                        + edition
                        + "\"",
                    OTHER_EDITION));
  }
}
