package assize.cli;

import assize.text.Sha256;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * How some files were at one look.
 *
 * @param files by path; for each a word that changes when it is saved, empty where it is not there
 */
record FileSnapshot(Map<Path, String> files) {
  private static final int MOST_FILES = 1000;
  private static final int DEEPEST = 16;
  private static final long LARGEST_TEXT = 4L * 1024 * 1024;

  FileSnapshot {
    files = new TreeMap<>(files);
  }

  /**
   * Looks at files; of a folder, at the texts that a rule set or a folder of records is made of.
   *
   * @param paths files and folders, there or not
   */
  static FileSnapshot look(Collection<Path> paths) {
    Map<Path, String> files = new TreeMap<>();
    for (Path path : paths) {
      Path whole = path.toAbsolutePath().normalize();
      for (Path one : Files.isDirectory(whole) ? texts(whole) : List.of(whole)) {
        files.put(one, word(one));
      }
    }
    return new FileSnapshot(files);
  }

  /** Returns the same files as they were at an earlier look, where that looked at them. */
  FileSnapshot asOf(FileSnapshot earlier) {
    Map<Path, String> then = new TreeMap<>(files);
    then.replaceAll((path, word) -> earlier.files.getOrDefault(path, word));
    return new FileSnapshot(then);
  }

  /** Returns the files that are not as they were, one at least where the looks differ. */
  List<Path> changedFrom(FileSnapshot before) {
    return Stream.concat(files.keySet().stream(), before.files.keySet().stream())
        .distinct()
        .filter(it -> !files.getOrDefault(it, "").equals(before.files.getOrDefault(it, "")))
        .sorted()
        .toList();
  }

  private static List<Path> texts(Path folder) {
    boolean isRuleSet = Files.exists(folder.resolve("rules.yaml"));
    try (Stream<Path> walk = Files.walk(folder, isRuleSet ? DEEPEST : 1)) {
      return walk.filter(it -> isText(it) && !Files.isDirectory(it)).limit(MOST_FILES).toList();
    } catch (IOException | java.io.UncheckedIOException e) {
      return List.of();
    }
  }

  private static boolean isText(Path path) {
    Path name = path.getFileName();
    return name != null && name.toString().endsWith(".yaml") && !name.toString().startsWith(".");
  }

  /**
   * Tells a text by what is in it, since clocks of disks are coarse; a photo by length and time.
   */
  private static String word(Path path) {
    try {
      BasicFileAttributes attributes = Files.readAttributes(path, BasicFileAttributes.class);
      boolean isText = isText(path) && attributes.size() <= LARGEST_TEXT;
      return isText && attributes.isRegularFile()
          ? Sha256.of(Files.readAllBytes(path))
          : attributes.size() + " " + attributes.lastModifiedTime();
    } catch (IOException e) {
      return "";
    }
  }
}
