package assize.image;

import java.io.IOException;
import javax.imageio.stream.ImageInputStreamImpl;

/**
 * Bytes in memory as a decoder reads them, without a copy of them on the disk. A decoder that goes
 * on asking behind the end is stopped: that of WebP would make up every pixel that is missing.
 */
final class BoundedImageStream extends ImageInputStreamImpl {
  /** How often may be asked for more; a decoder that looks ahead does so a few times. */
  private static final int PATIENCE = 1000;

  private final byte[] bytes;
  private int asked;

  BoundedImageStream(byte[] bytes) {
    this.bytes = bytes;
  }

  @Override
  public int read() throws IOException {
    bitOffset = 0;
    return streamPos < bytes.length ? bytes[(int) streamPos++] & 0xff : end();
  }

  private int end() throws IOException {
    if (++asked > PATIENCE) {
      throw new IOException("the picture ends before all of it is there");
    }
    return -1;
  }

  @Override
  public int read(byte[] into, int from, int most) throws IOException {
    bitOffset = 0;
    if (most == 0) {
      return 0;
    }
    int count = (int) Math.min(most, bytes.length - streamPos);
    if (count <= 0) {
      return end();
    }
    System.arraycopy(bytes, (int) streamPos, into, from, count);
    streamPos += count;
    return count;
  }

  @Override
  public long length() {
    return bytes.length;
  }
}
