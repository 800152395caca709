package assize.image;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import assize.text.Parsed;
import java.awt.image.BufferedImage;
import java.awt.image.WritableRaster;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.zip.CRC32;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Files that are damaged, hostile or something else: each gets a plain word, never an exception.
 */
class BrokenPicturesTest {
  private static final List<String> KINDS =
      List.of("jpeg", "progressive", "png", "lossy", "lossless");

  private static byte[] whole(String kind) throws IOException {
    return switch (kind) {
      case "progressive" -> progressive();
      case "lossy", "lossless", "clear", "clear-lossless", "moving", "turned" ->
          CornerColors.webp(kind);
      default -> CornerColors.file(kind, 60, 40);
    };
  }

  private static byte[] progressive() throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ImageOutputStream stream = ImageIO.createImageOutputStream(out)) {
      ImageWriteParam how = writer.getDefaultWriteParam();
      how.setProgressiveMode(ImageWriteParam.MODE_DEFAULT);
      writer.setOutput(stream);
      writer.write(null, new IIOImage(CornerColors.image(60, 40), null, null), how);
    }
    writer.dispose();
    return out.toByteArray();
  }

  private static Parsed<Photo> read(byte[] file) {
    return Photo.of(file, List.of());
  }

  private static String reason(byte[] file) {
    return read(file).match(photo -> "read", Parsed.Bad::reason);
  }

  @ParameterizedTest
  @ValueSource(strings = {"jpeg", "progressive", "png", "lossy", "lossless", "clear", "turned"})
  void whatIsCutOffAnywhereIsRefused(String kind) throws IOException {
    byte[] whole = whole(kind);
    assertThat(reason(whole)).isEqualTo("read");
    int step = Math.max(1, whole.length / 300);
    for (int length = 0; length < whole.length; length += length < 100 ? 1 : step) {
      String reason = reason(Arrays.copyOf(whole, length));
      assertThat(reason)
          .as("%s of %s bytes", length, whole.length)
          .matches(
              "the file is empty; copy.*|this file holds no picture; .*|this is a .*damaged.*");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"jpeg", "png", "lossy", "lossless"})
  void whatBreaksOffAndGoesOnAsZerosIsNeverAnException(String kind) throws IOException {
    byte[] whole = whole(kind);
    for (int length = 20; length < whole.length - 20; length += Math.max(1, whole.length / 50)) {
      byte[] file = whole.clone();
      Arrays.fill(file, length, whole.length, (byte) 0);
      assertThat(reason(file)).as("from %s on", length).doesNotStartWith("the file");
    }
  }

  /**
   * A JPEG's reader only warns where its coded pixels end too early; that is damage all the same.
   */
  @Test
  void aJpegWhoseCodedPixelsEndEarlyIsDamaged() {
    byte[] jpeg = CornerColors.file("jpeg", 200, 200);
    int kept = jpeg.length - 300;
    byte[] file =
        PlantedMetadata.join(Arrays.copyOf(jpeg, kept), new byte[] {(byte) 0xff, (byte) 0xd9});
    assertThat(reason(file)).contains("damaged (it ends before the picture does); copy it again");
  }

  @Test
  void flippedBytesGiveAPictureOrAWord() throws IOException {
    Random random = new Random(17);
    for (String kind : KINDS) {
      byte[] whole = whole(kind);
      for (int i = 0; i < 400; i++) {
        byte[] file = whole.clone();
        for (int flips = 1 + random.nextInt(3); flips > 0; flips--) {
          file[random.nextInt(file.length)] ^= (byte) (1 << random.nextInt(8));
        }
        String said =
            read(file).match(it -> "" + MetadataFreeCheck.faults(it.bytes()), Parsed.Bad::reason);
        assertThat(said).as("%s, %s", kind, i).matches("\\[]|this .*|the .*");
      }
    }
  }

  @ParameterizedTest
  @CsvSource({"60000, 60000", "65535, 65535", "10001, 10000"})
  void aPngThatClaimsTooManyPixelsIsNotDecoded(int width, int height) {
    assertThat(reason(claiming(width, height)))
        .contains(
            "this picture has " + ((long) width * height + 999_999) / 1_000_000 + " million pixels")
        .endsWith("at most 100 million are read: save a smaller one");
  }

  @ParameterizedTest
  @CsvSource({"1, 2147483647", "2147483647, 2147483647", "65536, 1"})
  void aPngThatClaimsToBeTooLongIsNotDecoded(int width, int height) {
    assertThat(reason(claiming(width, height)))
        .contains("this picture is " + Math.max(width, height) + " pixels long; at most 65535");
  }

  @Test
  void aPngThatClaimsMorePixelsThanItHoldsIsDamaged() {
    assertThat(reason(claiming(9000, 9000))).contains("it ends before the picture does");
  }

  /** Returns a small picture that says to be as large as this. */
  private static byte[] claiming(int width, int height) {
    byte[] png = CornerColors.file("png", 60, 40);
    ByteBuffer header = ByteBuffer.wrap(png).putInt(16, width).putInt(20, height);
    CRC32 crc = new CRC32();
    crc.update(png, 12, 17);
    header.putInt(29, (int) crc.getValue());
    return png;
  }

  @Test
  void aJpegAndAWebpThatClaimTooManyPixelsAreNotDecoded() throws IOException {
    byte[] jpeg = CornerColors.file("jpeg", 60, 40);
    int frame = marker(jpeg, 0xc0);
    ByteBuffer.wrap(jpeg).putShort(frame + 5, (short) 60_000).putShort(frame + 7, (short) 60_000);
    assertThat(reason(jpeg)).contains("3600 million pixels");
    byte[] slow = whole("progressive");
    frame = marker(slow, 0xc2);
    ByteBuffer.wrap(slow).putShort(frame + 5, (short) 9_000).putShort(frame + 7, (short) 9_000);
    assertThat(reason(slow)).contains("81 million pixels").contains("not a progressive one");
    byte[] webp = CornerColors.webp("lossy");
    webp[26] = (byte) 0xff;
    webp[27] = 0x3f;
    webp[28] = (byte) 0xff;
    webp[29] = 0x3f;
    assertThat(reason(webp)).contains("269 million pixels; at most 16 million");
  }

  private static int marker(byte[] jpeg, int marker) {
    for (int i = 0; i + 1 < jpeg.length; i++) {
      if ((jpeg[i] & 0xff) == 0xff && (jpeg[i + 1] & 0xff) == marker) {
        return i;
      }
    }
    throw new IllegalArgumentException("no marker");
  }

  @Test
  void aJpegForThePressIsRefusedKindly() throws IOException {
    WritableRaster raster =
        java.awt.image.Raster.createInterleavedRaster(
            java.awt.image.DataBuffer.TYPE_BYTE, 16, 16, 4, null);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    try (ImageOutputStream stream = ImageIO.createImageOutputStream(out)) {
      writer.setOutput(stream);
      writer.write(null, new IIOImage(raster, null, null), null);
    }
    writer.dispose();
    assertThat(reason(out.toByteArray()))
        .isEqualTo(
            "this JPEG has the colors of a printing press (CMYK); save it again as JPEG with RGB"
                + " colors in the photo program");
  }

  @Test
  void aJpegOfARareKindIsRefusedKindly() {
    byte[] jpeg = CornerColors.file("jpeg", 60, 40);
    jpeg[marker(jpeg, 0xc0) + 1] = (byte) 0xc9;
    assertThat(reason(jpeg))
        .isEqualTo("this is a rare kind of JPEG; save it again as an ordinary JPEG");
  }

  @Test
  void aJpegOfEndlessScansIsRefused() throws IOException {
    byte[] slow = whole("progressive");
    int scan = marker(slow, 0xda);
    byte[] one = Arrays.copyOfRange(slow, scan, scan + 12);
    List<byte[]> parts = new ArrayList<>();
    parts.add(Arrays.copyOf(slow, scan));
    for (int i = 0; i < 200; i++) {
      parts.add(one);
    }
    parts.add(Arrays.copyOfRange(slow, scan, slow.length));
    assertThat(reason(PlantedMetadata.join(parts.toArray(byte[][]::new))))
        .contains("rare kind of JPEG");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "ftypheic|this is a HEIC photo, which can't be read here; save it as JPEG in the phone",
        "ftypmif1|this is a HEIC photo",
        "ftypavif|this is an AVIF photo, which can't be read here",
        "ftypisom|this file holds no picture"
      })
  void aPhonesOwnFormatIsNamedAndWhatToDo(String brand, String words) {
    byte[] file =
        PlantedMetadata.join(new byte[] {0, 0, 0, 24}, PlantedMetadata.text(brand), new byte[40]);
    String reason = Photo.of(file, List.of()).match(photo -> "read", Parsed.Bad::reason);
    assertThat(reason).startsWith(words);
  }

  @Test
  void otherKindsAreNeverShown() {
    assertThat(reason(CornerColors.file("gif", 10, 10)))
        .isEqualTo("this is a GIF, which is not shown; save it as JPEG or PNG");
    assertThat(reason(CornerColors.file("bmp", 10, 10))).contains("a BMP, which is not shown");
    assertThat(reason(CornerColors.file("tiff", 10, 10))).contains("a TIFF");
    assertThat(reason(letters("<?xml version='1.0'?>\n<svg xmlns='http://www.w3.org/2000/svg'/>")))
        .contains("an SVG drawing");
    assertThat(reason(letters("%PDF-1.7\n"))).contains("give it as a document");
    assertThat(reason(letters("A plain text.")))
        .isEqualTo("this file holds no picture; name a JPEG, a PNG or a WebP picture");
    assertThat(reason(new byte[0]))
        .isEqualTo("the file is empty; copy it again from where it came");
    assertThat(reason(CornerColors.webp("moving"))).contains("a moving WebP picture");
  }

  @Test
  void aFileThatIsTooLongIsNotLookedAt() {
    assumeThat(Runtime.getRuntime().maxMemory()).isGreaterThan(400_000_000L);
    byte[] file =
        Arrays.copyOf(CornerColors.file("jpeg", 60, 40), (int) Photo.MOST_BYTES + 1_000_000);
    assertThat(reason(file))
        .isEqualTo("the file has 101 MB; at most 100 are read: save a smaller one");
  }

  /** A profile that unpacks to far more than it is (a bomb) is not followed. */
  @Test
  void aProfileThatIsABombIsLeftAlone() {
    byte[] packed = PlantedMetadata.packed(new byte[40_000_000]);
    byte[] file =
        PlantedMetadata.pngWith(
            "iCCP",
            PlantedMetadata.join(PlantedMetadata.text("x"), new byte[1], packed),
            CornerColors.file("png", 60, 40));
    assertThat(CornerColors.of(read(file).toOptional().orElseThrow())).isEqualTo("RGBW");
  }

  private static byte[] letters(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  @Test
  void oddDepthsAreRead() {
    for (int type :
        List.of(
            BufferedImage.TYPE_BYTE_GRAY,
            BufferedImage.TYPE_USHORT_GRAY,
            BufferedImage.TYPE_BYTE_BINARY,
            BufferedImage.TYPE_BYTE_INDEXED,
            BufferedImage.TYPE_INT_ARGB)) {
      BufferedImage image = new BufferedImage(40, 30, type);
      image.createGraphics().drawImage(CornerColors.image(40, 30), 0, 0, null);
      BufferedImage seen =
          CornerColors.seen(read(CornerColors.file("png", image)).toOptional().orElseThrow());
      assertThat(CornerColors.near(seen.getRGB(30, 25), 0xffffff, 4)).as("%s", type).isTrue();
    }
  }
}
