package assize.timeline;

import assize.date.DateRange;
import java.util.List;

/**
 * What sources come to over the production of some vehicles, for which it is alike.
 *
 * @param vehicles any of these
 * @param window the production of their models
 * @param stands in the order of days; days on which the item does not apply are left out, so that
 *     there is at least one
 */
public record VehicleTimeline(
    List<VehicleGroup> vehicles, DateRange window, List<TimelineEntry> stands) {
  public VehicleTimeline {
    vehicles = List.copyOf(vehicles);
    stands = List.copyOf(stands);
  }
}
