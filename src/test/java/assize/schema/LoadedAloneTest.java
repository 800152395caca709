package assize.schema;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Tables name each other while their classes are loaded; whichever comes first, that must go. */
class LoadedAloneTest {
  private static final List<String> PACKAGES = List.of("aspect", "evidence", "ruleset", "record");

  @Test
  void eachClassCanBeTheFirst() throws IOException {
    URL[] path =
        Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
            .map(LoadedAloneTest::url)
            .toArray(URL[]::new);
    List<String> failed = new ArrayList<>();
    List<String> names = names();
    for (String name : names) {
      try (URLClassLoader alone = new URLClassLoader(path, ClassLoader.getPlatformClassLoader())) {
        Class.forName(name, true, alone);
      } catch (ClassNotFoundException | LinkageError e) {
        failed.add(name + ": " + e);
      }
    }
    assertThat(names).hasSizeGreaterThan(50);
    assertThat(failed).isEmpty();
  }

  private static URL url(String entry) {
    try {
      return new File(entry).toURI().toURL();
    } catch (MalformedURLException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Returns the classes that have, or may have, tables. */
  private static List<String> names() throws IOException {
    List<String> names = new ArrayList<>();
    for (String one : PACKAGES) {
      Path folder = Path.of("src/main/java/assize", one);
      try (Stream<Path> files = Files.list(folder)) {
        files
            .map(file -> file.getFileName().toString().replace(".java", ""))
            .filter(file -> !file.equals("package-info"))
            .map(file -> "assize." + one + "." + file)
            .forEach(names::add);
      }
    }
    for (String part : List.of("Series", "Entry", "Reserved")) {
      names.add("assize.ruleset.NumberTable$" + part);
    }
    return names;
  }
}
