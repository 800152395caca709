package assize.demo;

import java.io.IOException;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Supplier;
import javax.imageio.ImageIO;

/** The pictures that the demonstration's records show as evidence, each drawn here. */
final class DemoPictures {
  private DemoPictures() {}

  /** Returns each picture's file name and how it is drawn. */
  static SortedMap<String, Supplier<Sketch>> all() {
    SortedMap<String, Supplier<Sketch>> all = new TreeMap<>();
    all.put("bed-trace.png", DetailPictures::bedTrace);
    all.put("chassis-number.png", DetailPictures::chassisNumber);
    all.put("data-plate.png", DetailPictures::dataPlate);
    all.put("horn-button.png", DetailPictures::hornButton);
    all.put("pinstripe.png", DetailPictures::pinstripe);
    all.put("tank-lining.png", MotorcyclePictures::tankLining);
    all.put("cab-interior.png", InsidePictures::cabInterior);
    all.put("cab-side.png", TruckPictures::cabSide);
    all.put("radiator.png", TruckPictures::radiator);
    all.put("tail-lamp.png", TruckPictures::tailLamp);
    all.put("engine-left.png", InsidePictures::engineLeft);
    all.put("q-engine.png", MotorcyclePictures::motorcycleEngine);
    return all;
  }

  /** Draws every picture anew into a folder. */
  static void draw(Path folder) throws IOException {
    for (var entry : all().entrySet()) {
      ImageIO.write(
          entry.getValue().get().picture(), "png", folder.resolve(entry.getKey()).toFile());
    }
  }

  public static void main(String[] args) throws IOException {
    draw(Path.of(args.length == 0 ? "rules/photos" : args[0]));
  }
}
