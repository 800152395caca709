package assize.fault;

import java.io.IOException;
import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.nio.file.WatchService;
import java.nio.file.attribute.UserPrincipalLookupService;
import java.nio.file.spi.FileSystemProvider;
import java.util.List;
import java.util.Set;
import java.util.stream.StreamSupport;

/** The names of files on the faulty disk: those of the disk below. */
final class FaultySystem extends FileSystem {
  private final FaultyFiles files;
  private final FileSystem below;

  FaultySystem(FaultyFiles files, FileSystem below) {
    this.files = files;
    this.below = below;
  }

  Path over(Path path) {
    return new FaultyPath(this, path);
  }

  @Override
  public FileSystemProvider provider() {
    return files;
  }

  @Override
  public void close() throws IOException {
    below.close();
  }

  @Override
  public boolean isOpen() {
    return below.isOpen();
  }

  @Override
  public boolean isReadOnly() {
    return below.isReadOnly();
  }

  @Override
  public String getSeparator() {
    return below.getSeparator();
  }

  @Override
  public Iterable<Path> getRootDirectories() {
    List<Path> roots =
        StreamSupport.stream(below.getRootDirectories().spliterator(), false)
            .map(this::over)
            .toList();
    return roots;
  }

  @Override
  public Iterable<FileStore> getFileStores() {
    return below.getFileStores();
  }

  @Override
  public Set<String> supportedFileAttributeViews() {
    return below.supportedFileAttributeViews();
  }

  @Override
  public Path getPath(String first, String... more) {
    return over(below.getPath(first, more));
  }

  @Override
  public PathMatcher getPathMatcher(String pattern) {
    PathMatcher matcher = below.getPathMatcher(pattern);
    return path -> matcher.matches(FaultyPath.bare(path));
  }

  @Override
  public UserPrincipalLookupService getUserPrincipalLookupService() {
    return below.getUserPrincipalLookupService();
  }

  @Override
  public WatchService newWatchService() throws IOException {
    return below.newWatchService();
  }
}
