package assize.cli;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The files of a folder and of those below it that may be records, in the order of their paths. No
 * link is followed, and no hidden file or folder looked into.
 *
 * @param files named like records or rule sets
 * @param closed what could not be looked into
 */
record RecordFileFinder(List<Path> files, List<Path> closed) {
  RecordFileFinder {
    files = List.copyOf(files);
    closed = List.copyOf(closed);
  }

  static RecordFileFinder in(Path folder) throws IOException {
    List<Path> files = new ArrayList<>();
    List<Path> closed = new ArrayList<>();
    Path real = folder.toRealPath();
    Files.walkFileTree(
        real,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult preVisitDirectory(Path path, BasicFileAttributes attributes) {
            return !path.equals(real) && isHidden(path)
                ? FileVisitResult.SKIP_SUBTREE
                : FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult visitFile(Path path, BasicFileAttributes attributes) {
            if (attributes.isRegularFile()
                && !isHidden(path)
                && ArgumentNormalizer.isYaml(path.toString())) {
              files.add(folder.resolve(real.relativize(path)));
            }
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult visitFileFailed(Path path, IOException cause) {
            closed.add(folder.resolve(real.relativize(path)));
            return FileVisitResult.CONTINUE;
          }
        });
    files.sort(Comparator.comparing(RecordFileFinder::shown));
    closed.sort(Comparator.comparing(RecordFileFinder::shown));
    return new RecordFileFinder(files, closed);
  }

  private static boolean isHidden(Path path) {
    Path name = path.getFileName();
    return name != null && name.toString().startsWith(".");
  }

  /** Returns a path as messages show it, the same on every system. */
  static String shown(Path path) {
    return path.toString().replace('\\', '/');
  }
}
