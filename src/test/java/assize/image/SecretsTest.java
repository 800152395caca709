package assize.image;

import static assize.image.PlantedMetadata.SECRET;
import static assize.image.PlantedMetadata.join;
import static assize.image.PlantedMetadata.jpegWith;
import static assize.image.PlantedMetadata.pngWith;
import static assize.image.PlantedMetadata.text;
import static org.assertj.core.api.Assertions.assertThat;

import com.drew.lang.ByteArrayReader;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifReader;
import com.drew.metadata.exif.ExifSubIFDDirectory;
import com.drew.metadata.exif.ExifThumbnailDirectory;
import com.drew.metadata.exif.GpsDirectory;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What cameras, phones and programs write into pictures is in no byte of what comes out. */
class SecretsTest {
  private static final byte[] EXIF = PlantedMetadata.exif(1, ByteOrder.LITTLE_ENDIAN);

  /** The places are those of Exif 2.32, XMP part 3, IPTC-IIM 4.2 and the formats' own standards. */
  private static final Map<String, byte[]> FILES = new LinkedHashMap<>();

  static {
    byte[] jpeg = CornerColors.file("jpeg", 60, 40);
    byte[] profile =
        join(
            text("ICC_PROFILE"),
            new byte[] {1, 1},
            ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData(),
            text(SECRET));
    FILES.put("JPEG, Exif", PlantedMetadata.jpegWithExif(EXIF, jpeg));
    FILES.put("JPEG, XMP", jpegWith(0xe1, text("http://ns.adobe.com/xap/1.0/\0" + SECRET), jpeg));
    FILES.put("JPEG, IPTC", jpegWith(0xed, text("Photoshop 3.0\0" + "8BIM\4\4" + SECRET), jpeg));
    FILES.put("JPEG, color profile", jpegWith(0xe2, profile, jpeg));
    FILES.put("JPEG, comment", jpegWith(0xfe, text(SECRET), jpeg));
    FILES.put("JPEG, small copy", jpegWith(0xe0, text("JFXX\0\20" + SECRET), jpeg));
    FILES.put("JPEG, maker's segment", jpegWith(0xef, text(SECRET), jpeg));
    FILES.put("JPEG, behind the end", join(jpeg, text(SECRET), jpeg));
    byte[] png = CornerColors.file("png", 60, 40);
    byte[] packed = PlantedMetadata.packed(text(SECRET));
    FILES.put("PNG, text", pngWith("tEXt", text("Comment\0" + SECRET), png));
    FILES.put("PNG, packed text", pngWith("zTXt", join(text("Comment\0"), packed), png));
    FILES.put(
        "PNG, text of many letters", pngWith("iTXt", text("Comment\0\0\0\0\0" + SECRET), png));
    FILES.put("PNG, Exif", pngWith("eXIf", EXIF, png));
    FILES.put("PNG, color profile", pngWith("iCCP", join(text(SECRET + "\0"), packed), png));
    FILES.put("PNG, a program's chunk", pngWith("seCr", text(SECRET), png));
    FILES.put("PNG, behind the end", join(png, text(SECRET)));
    FILES.put("PNG, between pieces", between(png));
    FILES.put("PNG, behind the pixels", behindPixels(png));
    FILES.put("WebP", PlantedMetadata.webpWith(EXIF, CornerColors.webp("lossy")));
    FILES.put("WebP, lossless", PlantedMetadata.webpWith(EXIF, CornerColors.webp("lossless")));
  }

  /** Puts a chunk with a wrong check sum before the end. */
  private static byte[] between(byte[] png) {
    byte[] chunk = PlantedMetadata.chunk("tEXt", text(SECRET));
    chunk[chunk.length - 1] ^= 1;
    int end = png.length - 12;
    return join(
        java.util.Arrays.copyOf(png, end),
        chunk,
        java.util.Arrays.copyOfRange(png, end, png.length));
  }

  /** Puts a further piece of pixels, which no pixel needs, before the end. */
  private static byte[] behindPixels(byte[] png) {
    int end = png.length - 12;
    return join(
        java.util.Arrays.copyOf(png, end),
        PlantedMetadata.chunk("IDAT", text(SECRET)),
        java.util.Arrays.copyOfRange(png, end, png.length));
  }

  static Stream<String> files() {
    return FILES.keySet().stream();
  }

  private static String latin(byte[] bytes) {
    return new String(bytes, StandardCharsets.ISO_8859_1);
  }

  @ParameterizedTest
  @MethodSource("files")
  void nothingButThePictureTravels(String name) {
    byte[] file = FILES.getOrDefault(name, new byte[0]);
    assertThat(MetadataFreeCheck.faults(file)).as("what is planted").isNotEmpty();
    for (List<BlackoutBox> covered :
        List.of(List.<BlackoutBox>of(), List.of(new BlackoutBox(0, 0, 100, 100)))) {
      Photo photo = Photo.of(file, covered).toOptional().orElseThrow();
      assertThat(latin(photo.bytes()))
          .doesNotContain("SECRET", "OWNER", "Exif", "xap", "Photoshop", "8BIM", "JFXX", "acsp")
          .doesNotContain(latin(EXIF).substring(0, 8), latin(PlantedMetadata.packed(text(SECRET))));
      assertThat(MetadataFreeCheck.faults(photo.bytes())).isEmpty();
    }
  }

  /** The library that reads Exif is used here as a reader from outside. */
  @Test
  void theExifThatIsPlantedIsExif() {
    for (ByteOrder order : List.of(ByteOrder.LITTLE_ENDIAN, ByteOrder.BIG_ENDIAN)) {
      Metadata read = new Metadata();
      new ExifReader().extract(new ByteArrayReader(PlantedMetadata.exif(6, order)), read);
      assertThat(read.getFirstDirectoryOfType(ExifIFD0Directory.class).getInteger(0x0112))
          .isEqualTo(6);
      assertThat(read.getFirstDirectoryOfType(ExifIFD0Directory.class).getString(0x013b))
          .contains(SECRET);
      assertThat(read.getFirstDirectoryOfType(ExifSubIFDDirectory.class).getString(0xa431))
          .contains(SECRET);
      assertThat(read.getFirstDirectoryOfType(GpsDirectory.class).getGeoLocation().getLatitude())
          .isEqualTo(48.5);
      assertThat(read.getFirstDirectoryOfType(ExifThumbnailDirectory.class).getInteger(0x0202))
          .isPositive();
      assertThat(read.getDirectories()).allMatch(it -> !it.hasErrors());
    }
  }

  @Test
  void aPictureThatHidesSomethingIsNotBare() {
    byte[] jpeg = Photo.of(CornerColors.file("jpeg", 60, 40), List.of()).toOptional().get().bytes();
    assertThat(MetadataFreeCheck.faults(jpeg)).isEmpty();
    byte[] longer = jpegWith(0xdd, new byte[] {0, 0, 'S', 'E'}, jpeg);
    assertThat(MetadataFreeCheck.faults(longer)).hasSize(1).allMatch(it -> it.contains("FFDD"));
    byte[] fill =
        join(
            new byte[] {jpeg[0], jpeg[1], -1, -1},
            java.util.Arrays.copyOfRange(jpeg, 2, jpeg.length));
    assertThat(MetadataFreeCheck.faults(fill)).isNotEmpty();
    byte[] inside =
        join(
            java.util.Arrays.copyOf(jpeg, jpeg.length - 2),
            text(SECRET),
            new byte[] {(byte) 0xff, (byte) 0xd9});
    assertThat(MetadataFreeCheck.faults(inside)).as("behind the coded pixels").isNotEmpty();
    assertThat(MetadataFreeCheck.faults(text("no picture")))
        .containsExactly("neither a PNG nor a JPEG");
    assertThat(MetadataFreeCheck.faults(new byte[0])).isNotEmpty();
    assertThat(MetadataFreeCheck.faults(CornerColors.file("gif", 4, 4))).isNotEmpty();
  }

  @Test
  void whatLiesUnderClearPixelsOrInAPaletteDoesNotTravel() {
    java.awt.image.BufferedImage clear =
        new java.awt.image.BufferedImage(40, 40, java.awt.image.BufferedImage.TYPE_INT_ARGB);
    clear.setRGB(7, 7, 0x00123456);
    Photo photo = Photo.of(CornerColors.file("png", clear), List.of()).toOptional().orElseThrow();
    assertThat(CornerColors.seen(photo).getRGB(7, 7)).isEqualTo(0xffffffff);
    byte[] colors = new byte[768];
    System.arraycopy(text(SECRET), 0, colors, 300, SECRET.length());
    java.awt.image.IndexColorModel palette =
        new java.awt.image.IndexColorModel(8, 256, colors, 0, false);
    java.awt.image.BufferedImage painted =
        new java.awt.image.BufferedImage(
            40, 40, java.awt.image.BufferedImage.TYPE_BYTE_INDEXED, palette);
    byte[] file = CornerColors.file("png", painted);
    assertThat(latin(file)).contains(SECRET);
    byte[] out = Photo.of(file, List.of()).toOptional().orElseThrow().bytes();
    assertThat(latin(out)).doesNotContain(SECRET);
    assertThat(MetadataFreeCheck.faults(out)).isEmpty();
  }
}
