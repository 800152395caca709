package assize.bench.growth;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Runs commands on more and more of something and prints by which power of it their time and the
 * memory that they ask for grow: 1 is in step with it, 2 its square.
 *
 * <p>The slope is that of the straight line nearest to the logarithms of the middle times (least
 * squares), over the upper half of the sizes, where what does not grow weighs less.
 */
public final class Growth {
  private static final int ROUNDS = 3;

  private Growth() {}

  /** Takes the names of what is to grow; none: everything. */
  public static void main(String[] names) throws IOException {
    Path folder = Files.createTempDirectory("growth");
    System.out.println(
        String.join(
            ", ",
            LocalDate.now(ZoneOffset.UTC).toString(),
            Runtime.getRuntime().availableProcessors() + " cores",
            System.getProperty("os.arch"),
            "JDK " + Runtime.version()));
    System.out.println();
    System.out.println("| what grows | from, to | slope of time | slope of memory | ms | MB |");
    System.out.println("| --- | --- | --- | --- | --- | --- |");
    for (Course course : Stream.concat(Course.ALL.stream(), Courses.ALL.stream()).toList()) {
      if (names.length == 0 || List.of(names).contains(course.name())) {
        System.out.println(row(course, Files.createDirectory(folder.resolve(course.name()))));
      }
    }
    Folders.delete(folder);
  }

  private static String row(Course course, Path folder) throws IOException {
    List<Integer> sizes = course.sizes();
    List<ResourceUse> used = new ArrayList<>();
    for (int size : sizes) {
      Course.Run run = course.prepare(Files.createDirectory(folder.resolve("" + size)), size);
      for (int i = 0; used.isEmpty() && i < ROUNDS; i++) {
        run.once();
      }
      used.add(ResourceUse.middle(run, ROUNDS));
    }
    List<Integer> upper = sizes.subList(sizes.size() / 2 - 1, sizes.size());
    List<ResourceUse> last = used.subList(sizes.size() / 2 - 1, sizes.size());
    return String.format(
        Locale.ROOT,
        "| %s | %d, %d | %.2f | %.2f | %s | %s |",
        course.says(),
        sizes.get(0),
        sizes.get(sizes.size() - 1),
        slope(upper, last.stream().map(ResourceUse::seconds).toList()),
        slope(upper, last.stream().map(ResourceUse::megabytes).toList()),
        each(used.stream().map(it -> it.seconds() * 1000).toList()),
        each(used.stream().map(ResourceUse::megabytes).toList()));
  }

  private static String each(List<Double> numbers) {
    return numbers.stream()
        .map(it -> String.format(Locale.ROOT, "%.0f", it))
        .collect(Collectors.joining(" "));
  }

  /** Returns the slope of the straight line nearest to the logarithms. */
  static double slope(List<Integer> sizes, List<Double> values) {
    double meanX = 0;
    double meanY = 0;
    for (int i = 0; i < sizes.size(); i++) {
      meanX += Math.log(sizes.get(i)) / sizes.size();
      meanY += Math.log(values.get(i)) / sizes.size();
    }
    double over = 0;
    double under = 0;
    for (int i = 0; i < sizes.size(); i++) {
      double x = Math.log(sizes.get(i)) - meanX;
      over += x * (Math.log(values.get(i)) - meanY);
      under += x * x;
    }
    return over / under;
  }
}
