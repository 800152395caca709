package assize.report.view;

import assize.aspect.Finding;
import assize.measure.Lab;
import java.util.Optional;

/** What an instrument read of a color that was found. */
final class FoundColor implements Finding.Cases<Optional<Lab>> {
  @Override
  public Optional<Lab> color(Finding.Color found) {
    return found.lab();
  }

  @Override
  public Optional<Lab> word(Finding.Word found) {
    return Optional.empty();
  }

  @Override
  public Optional<Lab> gloss(Finding.Gloss found) {
    return Optional.empty();
  }

  @Override
  public Optional<Lab> size(Finding.Size found) {
    return Optional.empty();
  }

  @Override
  public Optional<Lab> screwThread(Finding.ScrewThread found) {
    return Optional.empty();
  }

  @Override
  public Optional<Lab> stamped(Finding.Stamped found) {
    return Optional.empty();
  }

  @Override
  public Optional<Lab> pieces(Finding.Pieces found) {
    return Optional.empty();
  }

  @Override
  public Optional<Lab> yesNo(Finding.YesNo found) {
    return Optional.empty();
  }
}
