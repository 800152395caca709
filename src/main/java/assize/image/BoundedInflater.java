package assize.image;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.util.List;
import java.util.Optional;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/** Unpacks zlib streams (RFC 1950) within bounds. */
final class BoundedInflater {
  private static final int AT_ONCE = 1 << 16;

  private BoundedInflater() {}

  /**
   * How a stream ended.
   *
   * @param length how many bytes it held, at most one more than asked for
   * @param isComplete whether its end and its check sum were reached
   * @param left how many bytes stand behind its end
   */
  record Ending(long length, boolean isComplete, long left) {}

  /** Unpacks a stream without keeping it. */
  static Ending ending(List<ByteBuffer> pieces, long most) {
    Inflater inflater = new Inflater();
    byte[] some = new byte[AT_ONCE];
    long length = 0;
    long left = 0;
    try {
      for (ByteBuffer piece : pieces) {
        if (inflater.finished()) {
          left += piece.remaining();
          continue;
        }
        inflater.setInput(piece.duplicate());
        while (length <= most && !inflater.finished() && !inflater.needsInput()) {
          int got = inflater.inflate(some);
          if (got == 0 && inflater.needsDictionary()) {
            return new Ending(length, false, left);
          }
          length += got;
        }
        left += inflater.finished() ? inflater.getRemaining() : 0;
      }
      return new Ending(length, inflater.finished(), left);
    } catch (DataFormatException e) {
      return new Ending(length, false, left);
    } finally {
      inflater.end();
    }
  }

  /** Unpacks a whole stream; empty where it is damaged or longer than is wanted. */
  static Optional<byte[]> whole(ByteBuffer packed, int most) {
    Inflater inflater = new Inflater();
    inflater.setInput(packed);
    ByteArrayOutputStream whole = new ByteArrayOutputStream();
    byte[] some = new byte[AT_ONCE];
    try {
      while (!inflater.finished() && whole.size() <= most) {
        int got = inflater.inflate(some);
        if (got == 0 && !inflater.finished()) {
          return Optional.empty();
        }
        whole.write(some, 0, got);
      }
      return whole.size() > most ? Optional.empty() : Optional.of(whole.toByteArray());
    } catch (DataFormatException e) {
      return Optional.empty();
    } finally {
      inflater.end();
    }
  }
}
