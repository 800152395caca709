package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.BufferedOutputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntFunction;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Photos as long as photos may be, and made to fill the memory, judged with 512 MB of it. */
@Tag("slow")
class SmallHeapTest {
  private static final int LENGTH = 99_000_000;

  @TempDir private Path folder = Path.of("");

  private static byte[] picture(String format) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), format, out);
    return out.toByteArray();
  }

  private static byte[] chunk(String type) {
    ByteBuffer chunk = ByteBuffer.allocate(12).putInt(0);
    chunk.put(type.getBytes(StandardCharsets.US_ASCII));
    CRC32 crc = new CRC32();
    crc.update(chunk.array(), 4, 4);
    return chunk.putInt((int) crc.getValue()).array();
  }

  /** Writes a file with pieces put in, as many as fill it up. */
  private void fill(String name, byte[] file, int at, IntFunction<byte[]> piece)
      throws IOException {
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(folder.resolve(name)))) {
      out.write(file, 0, at);
      int length = piece.apply(0).length;
      for (int i = 0; i < LENGTH / length; i++) {
        out.write(piece.apply(i));
      }
      out.write(file, at, file.length - at);
    }
  }

  private void webp(String name, IntFunction<byte[]> chunk) throws IOException {
    byte[] webp = Files.readAllBytes(Path.of("src/test/resources/assize/image/lossless.webp"));
    int added = LENGTH / chunk.apply(0).length * chunk.apply(0).length;
    ByteBuffer bytes = ByteBuffer.wrap(webp).order(ByteOrder.LITTLE_ENDIAN);
    bytes.putInt(4, bytes.getInt(4) + added);
    fill(name, webp, webp.length, chunk);
  }

  /** Writes one whose pixels are followed by zeros, in the same chunk (RFC 9649, 2.3). */
  private void longWebp(String name) throws IOException {
    byte[] webp = Files.readAllBytes(Path.of("src/test/resources/assize/image/lossless.webp"));
    ByteBuffer bytes = ByteBuffer.wrap(Arrays.copyOf(webp, LENGTH)).order(ByteOrder.LITTLE_ENDIAN);
    bytes.putInt(4, LENGTH - 8).putInt(16, LENGTH - 20);
    Files.write(folder.resolve(name), bytes.array());
  }

  @Test
  void noPhotoWithinTheLimitsNeedsMore() throws Exception {
    byte[] text = chunk("tEXt");
    byte[] data = chunk("IDAT");
    byte[] comment = {(byte) 0xff, (byte) 0xfe, 0, 2};
    byte[] png = picture("png");
    fill("texts.png", png, 33, i -> text);
    fill("data.png", png, png.length - 12, i -> data);
    fill("comments.jpg", picture("jpeg"), 2, i -> comment);
    ByteBuffer name = ByteBuffer.allocate(8);
    webp("names.webp", i -> name.putInt(0, 0x42000000 + i).array());
    longWebp("long.webp");
    Path small = Path.of("src/test/resources/assize/cli/small");
    Files.copy(small.resolve("rules.yaml"), folder.resolve("rules.yaml"));
    StringBuilder record =
        new StringBuilder(
            "record: shown\nrules: rules.yaml\nvehicle: {name: The shown one, model: X1}\n");
    record.append("evidence:\n");
    for (String file :
        List.of("texts.png", "data.png", "comments.jpg", "names.webp", "long.webp")) {
      record.append("  " + file.replace(".", "-") + ": {photo: " + file + "}\n");
    }
    Files.writeString(folder.resolve("shown.yaml"), record);
    String said = judge();
    assertThat(said)
        .contains("evidence \"texts-png\" (no item cites it): a PNG may have at most")
        .contains("evidence \"data-png\" (no item cites it): a PNG may have at most")
        .contains("evidence \"comments-jpg\" (no item cites it): a JPEG may have at most")
        .doesNotContain("names-webp", "long-webp")
        .contains("shown.html");
  }

  private String judge() throws Exception {
    List<String> line = new ArrayList<>();
    line.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    line.addAll(List.of("-Xmx512m", "-cp", System.getProperty("java.class.path", "")));
    line.addAll(List.of("assize.cli.Main", "judge", folder.resolve("shown.yaml").toString()));
    line.addAll(List.of("--skip-bad-photos", "--out", folder.resolve("out").toString()));
    ProcessBuilder builder = new ProcessBuilder(line).redirectErrorStream(true);
    builder.environment().remove("JAVA_TOOL_OPTIONS");
    Process process = builder.start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(said).isZero();
    return said;
  }
}
