package assize.photo;

import static org.assertj.core.api.Assertions.assertThat;

import assize.text.Parsed;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pictures made here, with what must not travel planted in them. */
class PhotoTest {
  private static final String SECRET = "THE OWNER'S ADDRESS 48.0000 N";

  private static byte[] picture(String format, int width, int height) throws IOException {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, width, height);
    graphics.setColor(Color.RED);
    graphics.fillRect(0, 0, width / 2, height / 2);
    graphics.dispose();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(image, format, out);
    return out.toByteArray();
  }

  /** Puts a text chunk (PNG, ISO/IEC 15948, 11.3.4.3) before the end, and text behind it. */
  private static byte[] withText(byte[] png) {
    byte[] data = ("Comment\0" + SECRET).getBytes(StandardCharsets.ISO_8859_1);
    byte[] type = "tEXt".getBytes(StandardCharsets.US_ASCII);
    CRC32 crc = new CRC32();
    crc.update(type);
    crc.update(data);
    ByteBuffer out = ByteBuffer.allocate(png.length + data.length + 12 + SECRET.length());
    out.put(png, 0, png.length - 12).putInt(data.length).put(type).put(data);
    out.putInt((int) crc.getValue()).put(png, png.length - 12, 12);
    out.put(SECRET.getBytes(StandardCharsets.ISO_8859_1));
    return out.array();
  }

  /** Puts a comment segment (JPEG, ISO/IEC 10918-1, B.2.4.5) behind the first marker. */
  private static byte[] withComment(byte[] jpeg) {
    byte[] data = SECRET.getBytes(StandardCharsets.ISO_8859_1);
    ByteBuffer out = ByteBuffer.allocate(jpeg.length + data.length + 4);
    out.put(jpeg, 0, 2).put((byte) 0xff).put((byte) 0xfe).putShort((short) (data.length + 2));
    out.put(data).put(jpeg, 2, jpeg.length - 2);
    return out.array();
  }

  private static Photo good(byte[] file) {
    return Photo.of(file, "", List.of()).toOptional().orElseThrow();
  }

  private static String latin(byte[] bytes) {
    return new String(bytes, StandardCharsets.ISO_8859_1);
  }

  @Test
  void nothingButThePictureTravels() throws IOException {
    byte[] png = withText(picture("png", 60, 40));
    byte[] jpeg = withComment(picture("jpeg", 60, 40));
    assertThat(latin(png)).contains(SECRET);
    assertThat(latin(jpeg)).contains(SECRET);
    assertThat(latin(good(png).bytes())).doesNotContain("OWNER");
    assertThat(latin(good(jpeg).bytes())).doesNotContain("OWNER");
  }

  @Test
  void aSmallPngKeepsEveryPixel() throws IOException {
    byte[] png = withText(picture("png", 60, 40));
    Photo photo = good(png);
    BufferedImage before = ImageIO.read(new ByteArrayInputStream(png));
    BufferedImage after = ImageIO.read(new ByteArrayInputStream(photo.bytes()));
    assertThat(after.getRGB(0, 0, 60, 40, null, 0, 60))
        .isEqualTo(before.getRGB(0, 0, 60, 40, null, 0, 60));
    assertThat(photo.mediaType()).isEqualTo("image/png");
  }

  @ParameterizedTest
  @ValueSource(strings = {"png", "jpeg"})
  void aLargePictureIsMadeSmaller(String format) throws IOException {
    Photo photo = good(picture(format, 3000, 1500));
    assertThat(photo.width()).isEqualTo(Photo.WIDEST);
    assertThat(photo.height()).isEqualTo(Photo.WIDEST / 2);
    assertThat(photo.dataUri()).startsWith("data:image/jpeg;base64,");
  }

  @ParameterizedTest
  @ValueSource(strings = {"png", "jpeg"})
  void whatIsCutOffAnywhereIsRefusedOrReadNeverAnError(String format) throws IOException {
    byte[] whole = picture(format, 60, 40);
    for (int length = 0; length < whole.length; length += 7) {
      Parsed<Photo> read = Photo.of(Arrays.copyOf(whole, length), "", List.of());
      if (format.equals("png")) {
        assertThat(read).isInstanceOf(Parsed.Bad.class);
      } else {
        read.toOptional().ifPresent(photo -> assertThat(photo.width()).isEqualTo(60));
      }
    }
  }

  @Test
  void whatClaimsTooManyPixelsIsNotDecoded() throws IOException {
    byte[] png = picture("png", 60, 40);
    ByteBuffer header = ByteBuffer.wrap(png);
    header.putInt(16, 50_000).putInt(20, 50_000);
    CRC32 crc = new CRC32();
    crc.update(png, 12, 17);
    header.putInt(29, (int) crc.getValue());
    assertThat(reason(png)).contains("2500 million pixels");
  }

  @Test
  void whatIsNoPictureIsRefusedKindly() throws IOException {
    assertThat(reason("<svg xmlns='http://www.w3.org/2000/svg'/>".getBytes(StandardCharsets.UTF_8)))
        .isEqualTo("this is no picture that can be shown: save it as JPEG or PNG");
    assertThat(reason(picture("gif", 10, 10))).isEqualTo("a picture is a JPEG or a PNG, not gif");
  }

  private static String reason(byte[] file) {
    return Photo.of(file, "", List.of()).match(photo -> "read", Parsed.Bad::reason);
  }
}
