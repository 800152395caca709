package assize.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.channels.SeekableByteChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * Text that waits on disk until it is wanted, in the system's folder for such files; nobody else
 * sees it, and it goes with the run. Where a system lets an open file go, even a program that is
 * killed leaves nothing.
 */
final class Spool implements AutoCloseable {
  private static final int PIECE = 1 << 16;

  private final SeekableByteChannel file;
  private long end;

  private Spool(SeekableByteChannel file) {
    this.file = file;
  }

  /** A piece of the text. */
  record Piece(long at, int length) {}

  /**
   * Begins with no text.
   *
   * @throws AtomicFileWriter.CannotWrite if that folder is not there or takes no file
   */
  static Spool open() {
    try {
      Path path = Files.createTempFile("assize-", ".spool");
      return new Spool(
          Files.newByteChannel(
              path,
              StandardOpenOption.READ,
              StandardOpenOption.WRITE,
              StandardOpenOption.DELETE_ON_CLOSE));
    } catch (IOException e) {
      throw cannot(e);
    }
  }

  private static AtomicFileWriter.CannotWrite cannot(IOException e) {
    Path folder = Path.of(System.getProperty("java.io.tmpdir", ""));
    String reason =
        Files.isDirectory(folder)
            ? AtomicFileWriter.said(e).orElse("the disk does not allow it")
            : "there is no such folder";
    return new AtomicFileWriter.CannotWrite(
        folder,
        reason
            + "; rows wait there until the page is made: java -Djava.io.tmpdir=DIR names another",
        e);
  }

  /**
   * Adds a piece.
   *
   * @throws AtomicFileWriter.CannotWrite if the disk is full
   */
  Piece append(String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    Piece piece = new Piece(end, bytes.length);
    try {
      file.position(end);
      for (ByteBuffer left = ByteBuffer.wrap(bytes); left.hasRemaining(); ) {
        file.write(left);
      }
    } catch (IOException e) {
      throw cannot(e);
    }
    end += bytes.length;
    return piece;
  }

  String read(Piece piece) throws IOException {
    ByteBuffer bytes = ByteBuffer.allocate(piece.length());
    file.position(piece.at());
    while (bytes.hasRemaining()) {
      if (file.read(bytes) < 0) {
        throw new IOException("a waiting text was cut off");
      }
    }
    return new String(bytes.array(), StandardCharsets.UTF_8);
  }

  /** Writes all of it. */
  void copyTo(OutputStream out) throws IOException {
    ByteBuffer bytes = ByteBuffer.allocate(PIECE);
    file.position(0);
    while (file.read(bytes.clear()) > 0) {
      out.write(bytes.array(), 0, bytes.position());
    }
  }

  @Override
  public void close() throws IOException {
    file.close();
  }
}
