package assize.cli;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/**
 * The files that one run writes: each is staged as a hidden part file in the folder that it is for,
 * and all are moved into place together at the end. What has not been moved is taken away when this
 * is closed or the program is stopped; only a part may outlive a program that is killed, and the
 * next run that writes into its folder clears it. May be used from several threads.
 */
final class OutputTransaction implements AutoCloseable {
  private static final String STOPPED = "the program is being stopped";

  private final Thread atEnd = new Thread(this::discard, "clear part files");
  private final Map<Path, Path> staged = new LinkedHashMap<>();
  private final Set<Path> parts = new HashSet<>();
  private final Set<Path> cleared = new HashSet<>();
  private final Deque<Path> made = new ArrayDeque<>();
  private long count;
  private boolean closed;

  OutputTransaction() {
    Runtime.getRuntime().addShutdownHook(atEnd);
  }

  /** Writes one file's bytes. */
  @FunctionalInterface
  interface Writing {
    void to(OutputStream out) throws IOException;
  }

  void stage(Path path, String text) {
    stage(path, text.getBytes(StandardCharsets.UTF_8));
  }

  void stage(Path path, byte[] bytes) {
    stage(path, out -> out.write(bytes));
  }

  /**
   * Stages a page, which takes the place of a page of this program and of nothing else.
   *
   * @throws AtomicFileWriter.CannotWrite if something else stands there or the disk does not allow
   *     it
   */
  void stagePage(Path path, String html) {
    stagePage(path, out -> out.write(html.getBytes(StandardCharsets.UTF_8)));
  }

  /** Does the same for a page that is not held whole. */
  void stagePage(Path path, Writing writing) {
    AtomicFileWriter.checkPages(Set.of(path));
    stage(path, writing);
  }

  /**
   * Writes a part file that {@link #commit} moves to where it belongs.
   *
   * @throws AtomicFileWriter.CannotWrite if something stands there or the disk does not allow it
   */
  void stage(Path path, Writing writing) {
    AtomicFileWriter.check(Set.of(path));
    try {
      Path folder = AtomicFileWriter.folderOf(path);
      make(folder);
      Path part = part(folder);
      try (OutputStream out =
          new BufferedOutputStream(Files.newOutputStream(part, StandardOpenOption.WRITE))) {
        writing.to(out);
      }
      add(path, part);
    } catch (IOException e) {
      throw AtomicFileWriter.cannotWrite(path, e);
    }
  }

  /**
   * Stages what takes the place of a person's own file: nobody may read it who may not read that
   * one, and it is on the disk itself before it takes the place, so that even a power cut leaves
   * the old file or the new one. Reports are not written so, since they can be made again.
   *
   * @throws AtomicFileWriter.CannotWrite if the disk does not allow it
   */
  void stageOwn(Path path, String text) {
    try {
      FileAttribute<?>[] closed = TempFileName.forOwnerAlone(path);
      make(AtomicFileWriter.folderOf(path));
      Path part = part(AtomicFileWriter.folderOf(path), closed);
      try (OutputStream out =
          Files.newOutputStream(part, StandardOpenOption.WRITE, StandardOpenOption.SYNC)) {
        out.write(text.getBytes(StandardCharsets.UTF_8));
      }
      if (closed.length > 0) {
        Files.setPosixFilePermissions(part, Files.getPosixFilePermissions(path));
      }
      add(path, part);
    } catch (IOException e) {
      throw AtomicFileWriter.cannotWrite(path, e);
    }
  }

  private synchronized void add(Path path, Path part) {
    if (staged.putIfAbsent(path, part) != null) {
      throw new IllegalStateException(path + " is written twice");
    }
  }

  private synchronized void make(Path folder) throws IOException {
    if (!cleared.add(folder)) {
      return;
    }
    Deque<Path> missing = new ArrayDeque<>();
    for (Path at = folder; at != null && !Files.exists(at); at = at.getParent()) {
      missing.push(at);
    }
    Files.createDirectories(folder);
    missing.forEach(made::push);
    TempFileName.clearStale(folder);
  }

  private synchronized Path part(Path folder, FileAttribute<?>... attributes) throws IOException {
    while (!closed) {
      Path part = folder.resolve(TempFileName.next(count++));
      try {
        Files.createFile(part, attributes);
        parts.add(part);
        return part;
      } catch (FileAlreadyExistsException e) {
        continue;
      } catch (NoSuchFileException e) {
        // Another run that came to nothing has just taken away the folder that it had made.
        if (!Files.exists(folder)) {
          Files.createDirectories(folder);
          continue;
        }
        throw e;
      }
    }
    throw new IOException(STOPPED);
  }

  /**
   * Moves everything staged so far to where it belongs, in the order in which it was staged.
   *
   * @throws AtomicFileWriter.CannotWrite at the first that can't be moved; it and those after it
   *     are left as they were
   */
  synchronized void commit() {
    if (closed) {
      throw new AtomicFileWriter.CannotWrite(
          staged.keySet().stream().findFirst().orElse(Path.of("")), STOPPED, new IOException());
    }
    AtomicFileWriter.check(staged.keySet());
    for (Map.Entry<Path, Path> one : staged.entrySet()) {
      try {
        move(one.getValue(), one.getKey());
        parts.remove(one.getValue());
        made.clear();
      } catch (IOException e) {
        throw AtomicFileWriter.cannotWrite(one.getKey(), e);
      }
    }
    staged.clear();
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /** Takes away what was staged and not placed, and the folders made for it. */
  @Override
  public void close() {
    discard();
    try {
      Runtime.getRuntime().removeShutdownHook(atEnd);
    } catch (IllegalStateException e) {
      // the program is being stopped, and the hook finds nothing left
    }
  }

  private synchronized void discard() {
    closed = true;
    parts.forEach(OutputTransaction::delete);
    made.forEach(OutputTransaction::delete);
    parts.clear();
    made.clear();
  }

  /** Deletes a part, or a folder if it is empty; what stays is cleared by the next run. */
  private static void delete(Path path) {
    try {
      Files.deleteIfExists(path);
    } catch (IOException e) {
      return;
    }
  }
}
