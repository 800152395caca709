package assize.image;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Writes a picture as JPEG, with nothing but the picture. */
final class Encoder {
  private static final float QUALITY = 0.85f;

  private Encoder() {}

  static byte[] jpeg(Pixels pixels) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageWriter writer = Decoder.jpegWriter();
    try (ImageOutputStream stream = new MemoryCacheImageOutputStream(out)) {
      ImageWriteParam how = writer.getDefaultWriteParam();
      how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      how.setCompressionQuality(QUALITY);
      writer.setOutput(stream);
      writer.write(null, new IIOImage(pixels.image(Pixels.SRGB), null, null), how);
    } finally {
      writer.dispose();
    }
    return out.toByteArray();
  }
}
