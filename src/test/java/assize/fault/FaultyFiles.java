package assize.fault;

import java.io.IOException;
import java.net.URI;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.AccessMode;
import java.nio.file.CopyOption;
import java.nio.file.DirectoryStream;
import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.FileAttributeView;
import java.nio.file.spi.FileSystemProvider;
import java.util.Map;
import java.util.Set;

/**
 * The disk of a whole process, named by {@code -Djava.nio.file.spi.DefaultFileSystemProvider}: it
 * numbers each step of writing that the program takes, and fails from one of them on. The program
 * needs no part of its own for that.
 */
public final class FaultyFiles extends FileSystemProvider {
  private final FileSystemProvider disk;
  private final FaultySystem system;
  private Fault fault = Fault.NONE;
  private int failing;
  private int steps;

  public FaultyFiles(FileSystemProvider disk) {
    this.disk = disk;
    this.system = new FaultySystem(this, disk.getFileSystem(URI.create("file:///")));
    String at = System.getProperty("faulty.halt", "");
    if (!at.isEmpty()) {
      arm(Fault.HALTED, Integer.parseInt(at));
    }
  }

  /** Returns the one that this process runs on. */
  static FaultyFiles ofThisProcess() {
    return (FaultyFiles) FileSystems.getDefault().provider();
  }

  /** Counts anew; the step of that number, from 1 on, is the first to fail. */
  synchronized void arm(Fault fault, int failing) {
    this.fault = fault;
    this.failing = failing;
    this.steps = 0;
  }

  /** Lets everything pass again; says how many steps there were. */
  synchronized int disarm() {
    fault = Fault.NONE;
    return steps;
  }

  private void step(Path path, Fault.Step step) throws IOException {
    step(path, step, false);
  }

  private synchronized boolean step(Path path, Fault.Step step, boolean bytes) throws IOException {
    steps++;
    if (fault != Fault.NONE && steps >= failing) {
      if (bytes && steps == failing && (fault == Fault.KILLED || fault == Fault.FULL)) {
        return false;
      }
      fault.fail(path, step, steps == failing, bytes);
    }
    return true;
  }

  private static Path bare(Path path) {
    return FaultyPath.bare(path);
  }

  @Override
  public String getScheme() {
    return disk.getScheme();
  }

  @Override
  public FileSystem newFileSystem(URI uri, Map<String, ?> env) throws IOException {
    return disk.newFileSystem(uri, env);
  }

  @Override
  public FileSystem getFileSystem(URI uri) {
    return system;
  }

  @Override
  public Path getPath(URI uri) {
    return system.over(disk.getPath(uri));
  }

  @Override
  public FileChannel newFileChannel(
      Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
      throws IOException {
    return disk.newFileChannel(bare(path), options, attributes);
  }

  @Override
  public SeekableByteChannel newByteChannel(
      Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
      throws IOException {
    if (!options.contains(StandardOpenOption.WRITE)) {
      return disk.newByteChannel(bare(path), options, attributes);
    }
    boolean fresh = options.contains(StandardOpenOption.CREATE_NEW);
    step(path, fresh ? Fault.Step.GROW : Fault.Step.KEEP);
    return new Channel(path, disk.newByteChannel(bare(path), options, attributes));
  }

  /** Writes by steps. */
  private final class Channel implements SeekableByteChannel {
    private final Path path;
    private final SeekableByteChannel file;

    Channel(Path path, SeekableByteChannel file) {
      this.path = path;
      this.file = file;
    }

    @Override
    public int write(ByteBuffer bytes) throws IOException {
      if (!step(path, Fault.Step.GROW, true)) {
        int half = bytes.remaining() / 2;
        file.write(bytes.slice(bytes.position(), half));
        fault.fail(path, Fault.Step.GROW, true, true);
      }
      return file.write(bytes);
    }

    @Override
    public int read(ByteBuffer bytes) throws IOException {
      return file.read(bytes);
    }

    @Override
    public long position() throws IOException {
      return file.position();
    }

    @Override
    public SeekableByteChannel position(long position) throws IOException {
      file.position(position);
      return this;
    }

    @Override
    public long size() throws IOException {
      return file.size();
    }

    @Override
    public SeekableByteChannel truncate(long size) throws IOException {
      file.truncate(size);
      return this;
    }

    @Override
    public boolean isOpen() {
      return file.isOpen();
    }

    @Override
    public void close() throws IOException {
      file.close();
    }
  }

  @Override
  public DirectoryStream<Path> newDirectoryStream(
      Path folder, DirectoryStream.Filter<? super Path> filter) throws IOException {
    DirectoryStream<Path> all =
        disk.newDirectoryStream(bare(folder), path -> filter.accept(system.over(path)));
    return new FaultyFolder(all, system);
  }

  @Override
  public void createDirectory(Path folder, FileAttribute<?>... attributes) throws IOException {
    step(folder, Fault.Step.GROW);
    disk.createDirectory(bare(folder), attributes);
  }

  @Override
  public void createSymbolicLink(Path link, Path target, FileAttribute<?>... attributes)
      throws IOException {
    step(link, Fault.Step.GROW);
    disk.createSymbolicLink(bare(link), bare(target), attributes);
  }

  @Override
  public void createLink(Path link, Path existing) throws IOException {
    step(link, Fault.Step.GROW);
    disk.createLink(bare(link), bare(existing));
  }

  @Override
  public Path readSymbolicLink(Path link) throws IOException {
    return system.over(disk.readSymbolicLink(bare(link)));
  }

  @Override
  public void delete(Path path) throws IOException {
    if (Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
      step(path, Fault.Step.KEEP);
    }
    disk.delete(bare(path));
  }

  @Override
  public void copy(Path source, Path target, CopyOption... options) throws IOException {
    step(target, Fault.Step.GROW);
    disk.copy(bare(source), bare(target), options);
  }

  @Override
  public void move(Path source, Path target, CopyOption... options) throws IOException {
    step(target, Fault.Step.KEEP);
    disk.move(bare(source), bare(target), options);
  }

  @Override
  public boolean isSameFile(Path path, Path other) throws IOException {
    return disk.isSameFile(bare(path), bare(other));
  }

  @Override
  public boolean isHidden(Path path) throws IOException {
    return disk.isHidden(bare(path));
  }

  @Override
  public FileStore getFileStore(Path path) throws IOException {
    return disk.getFileStore(bare(path));
  }

  @Override
  public void checkAccess(Path path, AccessMode... modes) throws IOException {
    disk.checkAccess(bare(path), modes);
  }

  @Override
  public <V extends FileAttributeView> V getFileAttributeView(
      Path path, Class<V> type, LinkOption... options) {
    return disk.getFileAttributeView(bare(path), type, options);
  }

  @Override
  public <A extends BasicFileAttributes> A readAttributes(
      Path path, Class<A> type, LinkOption... options) throws IOException {
    return disk.readAttributes(bare(path), type, options);
  }

  @Override
  public Map<String, Object> readAttributes(Path path, String attributes, LinkOption... options)
      throws IOException {
    return disk.readAttributes(bare(path), attributes, options);
  }

  @Override
  public void setAttribute(Path path, String attribute, Object value, LinkOption... options)
      throws IOException {
    step(path, Fault.Step.KEEP);
    disk.setAttribute(bare(path), attribute, value, options);
  }
}
