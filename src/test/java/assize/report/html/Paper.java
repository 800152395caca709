package assize.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** A printed report, read back by another program (Poppler). */
public final class Paper {
  /** Dots in an inch. */
  private static final int DOTS = 40;

  /** Darker is ink, of 0 (black) to 255 (white). */
  private static final int INK = 160;

  /** What the style leaves free at the top, the foot and each side, in millimeters. */
  private static final double[] MARGINS = {19, 17, 15};

  private final Path folder;
  private final Path pdf;

  public Paper(Path folder, byte[] pdf) throws IOException {
    this.folder = folder;
    this.pdf = Files.write(folder.resolve("report.pdf"), pdf);
  }

  /** Returns the text of each page in the order in which it is drawn. */
  public List<String> pages() throws IOException, InterruptedException {
    Path text = folder.resolve("report.txt");
    run("pdftotext", "-raw", "-enc", "UTF-8", pdf.toString(), text.toString());
    return List.of(Files.readString(text, StandardCharsets.UTF_8).split("\f"));
  }

  /**
   * Returns how far down each page is filled, between 0 and 1: the mean of its left and its right
   * half.
   */
  public List<Double> filled() throws IOException, InterruptedException {
    List<Double> filled = new ArrayList<>();
    for (Picture page : pictures()) {
      filled.add((page.filled(0, 0.49) + page.filled(0.51, 1)) / 2);
    }
    return filled;
  }

  /** Returns the mean gray of each page, of 0 (black) to 255 (white). */
  public List<Double> grays() throws IOException, InterruptedException {
    return pictures().stream().map(Picture::gray).toList();
  }

  private List<Picture> pictures() throws IOException, InterruptedException {
    Path pages = Files.createTempDirectory(folder, "pages");
    run("pdftoppm", "-r", "" + DOTS, "-gray", pdf.toString(), pages.resolve("page").toString());
    List<Picture> pictures = new ArrayList<>();
    try (Stream<Path> files = Files.list(pages)) {
      for (Path file : files.sorted().toList()) {
        pictures.add(Picture.of(Files.readAllBytes(file)));
      }
    }
    return pictures;
  }

  private static void run(String program, String... arguments)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Browser.needed(program).orElseThrow().toString());
    command.addAll(Arrays.asList(arguments));
    assertThat(new ProcessBuilder(command).inheritIO().start().waitFor()).isZero();
  }

  /** Leaves out what only sets type: blanks, ligatures, capitals and hyphens of broken lines. */
  public static String letters(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFKC)
        .toLowerCase(Locale.ROOT)
        .replaceAll("[\\s\\p{Cf}-]+", "");
  }

  /** One page in gray, as a portable graymap gives it ("P5", width, height, 255, then bytes). */
  private record Picture(int width, int height, int from, byte[] bytes) {
    static Picture of(byte[] file) {
      String head = new String(file, 0, 40, StandardCharsets.ISO_8859_1);
      String[] words = head.split("\\s", 5);
      assertThat(words[0]).isEqualTo("P5");
      assertThat(words[3]).isEqualTo("255");
      int from = words[0].length() + words[1].length() + words[2].length() + words[3].length() + 4;
      return new Picture(Integer.parseInt(words[1]), Integer.parseInt(words[2]), from, file);
    }

    private int at(int x, int y) {
      return bytes[from + y * width + x] & 0xFF;
    }

    double gray() {
      long sum = 0;
      for (int i = from; i < bytes.length; i++) {
        sum += bytes[i] & 0xFF;
      }
      return (double) sum / (bytes.length - from);
    }

    /** Returns how far down the last ink lies in a strip of what is between the margins. */
    double filled(double left, double right) {
      int top = dots(MARGINS[0]);
      int foot = height - dots(MARGINS[1]);
      int side = dots(MARGINS[2]);
      int first = side + (int) (left * (width - 2 * side));
      int last = side + (int) (right * (width - 2 * side));
      for (int y = foot - 1; y > top; y--) {
        for (int x = first; x < last; x++) {
          if (at(x, y) < INK) {
            return (double) (y - top) / (foot - top);
          }
        }
      }
      return 0;
    }

    private static int dots(double millimeters) {
      return (int) Math.round(millimeters / 25.4 * DOTS);
    }
  }
}
