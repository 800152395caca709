import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ExecutorService;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Decodes photos, shrinks them and encodes them, and nothing else; or makes some first. */
final class Photos {
  private static final int WIDEST = 1200;

  private Photos() {}

  /** Takes files; or "make", how many, and a folder for them. */
  public static void main(String[] arguments) throws Exception {
    if (arguments[0].equals("make")) {
      for (int i = 0; i < Integer.parseInt(arguments[1]); i++) {
        ImageIO.write(drawn(i), "jpeg", new File(arguments[2], "photo-" + i + ".jpg"));
      }
      return;
    }
    ExecutorService threads =
        Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
    List<Future<Integer>> all = new ArrayList<>();
    for (String file : arguments) {
      all.add(threads.submit(() -> jpeg(small(ImageIO.read(new File(file))))));
    }
    for (Future<Integer> one : all) {
      one.get();
    }
    threads.shutdown();
  }

  /** Draws 12 million pixels, as rich in detail as a photo of a gravel yard. */
  private static BufferedImage drawn(int seed) {
    BufferedImage image = new BufferedImage(4000, 3000, BufferedImage.TYPE_INT_RGB);
    long random = seed + 1;
    for (int y = 0; y < 3000; y++) {
      for (int x = 0; x < 4000; x++) {
        random = random * 6364136223846793005L + 1442695040888963407L;
        int grain = (int) (random >>> 59);
        image.setRGB(x, y, (x / 20 + grain) << 16 | (y / 15 + grain) << 8 | (x + y) / 32 + grain);
      }
    }
    return image;
  }

  private static BufferedImage small(BufferedImage image) {
    double by = Math.min(1, WIDEST / (double) Math.max(image.getWidth(), image.getHeight()));
    int width = (int) Math.round(image.getWidth() * by);
    int height = (int) Math.round(image.getHeight() * by);
    BufferedImage small = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D on = small.createGraphics();
    on.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    on.drawImage(image, 0, 0, width, height, null);
    on.dispose();
    return small;
  }

  private static int jpeg(BufferedImage image) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    try (MemoryCacheImageOutputStream stream = new MemoryCacheImageOutputStream(out)) {
      ImageWriteParam how = writer.getDefaultWriteParam();
      how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      how.setCompressionQuality(0.85f);
      writer.setOutput(stream);
      writer.write(null, new IIOImage(image, null, null), how);
    } finally {
      writer.dispose();
    }
    return out.size();
  }
}
