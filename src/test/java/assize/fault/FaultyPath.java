package assize.fault;

import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.nio.file.FileSystem;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.WatchEvent;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;

/** A name on the faulty disk. */
record FaultyPath(FaultySystem system, Path below) implements Path {
  static Path bare(Path path) {
    return path instanceof FaultyPath faulty ? faulty.below : path;
  }

  private Path over(Path path) {
    return path == null ? null : system.over(path);
  }

  @Override
  public FileSystem getFileSystem() {
    return system;
  }

  @Override
  public boolean isAbsolute() {
    return below.isAbsolute();
  }

  @Override
  public Path getRoot() {
    return over(below.getRoot());
  }

  @Override
  public Path getFileName() {
    return over(below.getFileName());
  }

  @Override
  public Path getParent() {
    return over(below.getParent());
  }

  @Override
  public int getNameCount() {
    return below.getNameCount();
  }

  @Override
  public Path getName(int index) {
    return over(below.getName(index));
  }

  @Override
  public Path subpath(int begin, int end) {
    return over(below.subpath(begin, end));
  }

  @Override
  public boolean startsWith(Path other) {
    return below.startsWith(bare(other));
  }

  @Override
  public boolean endsWith(Path other) {
    return below.endsWith(bare(other));
  }

  @Override
  public Path normalize() {
    return over(below.normalize());
  }

  @Override
  public Path resolve(Path other) {
    return over(below.resolve(bare(other)));
  }

  @Override
  public Path relativize(Path other) {
    return over(below.relativize(bare(other)));
  }

  @Override
  public URI toUri() {
    return below.toUri();
  }

  @Override
  public Path toAbsolutePath() {
    return over(below.toAbsolutePath());
  }

  @Override
  public Path toRealPath(LinkOption... options) throws IOException {
    return over(below.toRealPath(options));
  }

  @Override
  public File toFile() {
    return new File(below.toString());
  }

  @Override
  public WatchKey register(
      WatchService watcher, WatchEvent.Kind<?>[] events, WatchEvent.Modifier... modifiers)
      throws IOException {
    return below.register(watcher, events, modifiers);
  }

  @Override
  public int compareTo(Path other) {
    return below.compareTo(bare(other));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof FaultyPath faulty && below.equals(faulty.below);
  }

  @Override
  public int hashCode() {
    return below.hashCode();
  }

  @Override
  public String toString() {
    return below.toString();
  }
}
