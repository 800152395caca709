package assize.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Supplier;
import javax.imageio.ImageIO;

/** The pictures that the demonstration's records and sources show, each drawn here. */
final class DemoPictures {
  private DemoPictures() {}

  /** Returns each picture by its place in the demonstration, and how it is drawn. */
  static SortedMap<String, Supplier<Canvas>> all() {
    SortedMap<String, Supplier<Canvas>> all = new TreeMap<>();
    all.put("photos/bed-trace.png", DetailPictures::bedTrace);
    all.put("photos/chassis-number.png", DetailPictures::chassisNumber);
    all.put("photos/data-plate.png", DetailPictures::dataPlate);
    all.put("photos/horn-button.png", DetailPictures::hornButton);
    all.put("photos/pinstripe.png", DetailPictures::pinstripe);
    all.put("photos/tank-lining.png", MotorcyclePictures::tankLining);
    all.put("photos/cab-interior.png", InsidePictures::cabInterior);
    all.put("photos/cab-side.png", TruckPictures::cabSide);
    all.put("photos/radiator.png", TruckPictures::radiator);
    all.put("photos/tail-lamp.png", TruckPictures::tailLamp);
    all.put("photos/engine-left.png", InsidePictures::engineLeft);
    all.put("photos/q-engine.png", MotorcyclePictures::motorcycleEngine);
    sources(all);
    return all;
  }

  private static void sources(SortedMap<String, Supplier<Canvas>> all) {
    String truck = "tarrowby-type-l/pictures/";
    all.put(truck + "works-photo-11.png", SourcePictures::worksPhotograph);
    all.put(truck + "drawing-l388.png", SourcePictures::finishingNotes);
    all.put(truck + "survivor-4102.png", SourcePictures::survivorCorner);
    all.put(truck + "catalog-1934.png", SourcePictures::catalogPage);
    all.put(truck + "service-letter-9.png", SourcePictures::serviceLetter);
    all.put("pictures/q-finishing-schedule.png", SourcePictures::finishingSchedule);
    all.put("pictures/q-survivor-d1106.png", SourcePictures::survivorTank);
    all.put("pictures/q-works-photo-63.png", SourcePictures::motorcyclePhotograph);
  }

  /** Draws every picture anew into the demonstration's folder. */
  static void draw(Path folder) throws IOException {
    for (var entry : all().entrySet()) {
      Path file = folder.resolve(entry.getKey());
      Files.createDirectories(file.getParent());
      ImageIO.write(entry.getValue().get().picture(), "png", file.toFile());
    }
  }

  public static void main(String[] args) throws IOException {
    draw(Path.of(args.length == 0 ? "rules" : args[0]));
  }
}
