package assize.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Text that waits on disk until it is wanted; nobody else sees it, and it goes with the run. */
final class Spool implements AutoCloseable {
  private static final int PIECE = 1 << 16;

  private final Path path;
  private final RandomAccessFile file;
  private long end;

  private Spool(Path path, RandomAccessFile file) {
    this.path = path;
    this.file = file;
  }

  /** A piece of the text. */
  record Piece(long at, int length) {}

  static Spool open() throws IOException {
    Path path = Files.createTempFile("assize-", ".spool");
    Spool spool = new Spool(path, new RandomAccessFile(path.toFile(), "rw"));
    spool.unlink();
    return spool;
  }

  /** Where a system lets an open file go, even a program that is killed leaves nothing. */
  private void unlink() {
    try {
      Files.deleteIfExists(path);
    } catch (IOException e) {
      path.toFile().deleteOnExit();
    }
  }

  Piece append(String text) throws IOException {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    Piece piece = new Piece(end, bytes.length);
    file.seek(end);
    file.write(bytes);
    end += bytes.length;
    return piece;
  }

  String read(Piece piece) throws IOException {
    byte[] bytes = new byte[piece.length()];
    file.seek(piece.at());
    file.readFully(bytes);
    return new String(bytes, StandardCharsets.UTF_8);
  }

  /** Writes all of it. */
  void copyTo(OutputStream out) throws IOException {
    byte[] bytes = new byte[PIECE];
    file.seek(0);
    for (int n = file.read(bytes); n > 0; n = file.read(bytes)) {
      out.write(bytes, 0, n);
    }
  }

  @Override
  public void close() throws IOException {
    file.close();
    unlink();
  }
}
