package assize;

import static org.assertj.core.api.Assertions.assertThat;

import assize.schema.Table;
import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Classes that know each other while they load can fail by which of them is loaded first: a table
 * finds a field that is still null. So each class is loaded first once.
 */
class LoadingTest {
  private static final List<String> PACKAGES =
      List.of("schema", "pattern", "aspect", "evidence", "ruleset", "record");

  private static Path classes() throws URISyntaxException {
    URL place =
        Objects.requireNonNull(Table.class.getProtectionDomain().getCodeSource()).getLocation();
    return Path.of(place.toURI());
  }

  private static List<String> names(Path classes) throws IOException {
    List<String> names;
    try (Stream<Path> files = Files.walk(classes.resolve("assize"))) {
      names =
          files
              .map(it -> classes.relativize(it).toString())
              .filter(it -> it.endsWith(".class") && !it.endsWith("package-info.class"))
              .map(
                  it -> it.substring(0, it.length() - ".class".length()).replaceAll("[/\\\\]", "."))
              .filter(it -> PACKAGES.contains(it.split("\\.")[1]))
              .sorted()
              .toList();
    }
    return names;
  }

  @Test
  void eachClassCanBeTheFirst() throws Exception {
    Path classes = classes();
    List<String> names = names(classes);
    assertThat(names).hasSizeGreaterThan(100).contains("assize.record.VehicleRecord");
    URL[] place = {classes.toUri().toURL()};
    for (String name : names) {
      try (URLClassLoader alone = new URLClassLoader(place, new Libraries())) {
        assertThat(Class.forName(name, true, alone).getClassLoader()).as(name).isSameAs(alone);
      }
    }
  }

  /** Knows the libraries, and none of our own classes. */
  private static final class Libraries extends ClassLoader {
    @Override
    protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
      if (name.startsWith("assize.")) {
        throw new ClassNotFoundException(name);
      }
      return super.loadClass(name, resolve);
    }
  }
}
