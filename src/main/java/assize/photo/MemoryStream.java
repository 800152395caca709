package assize.photo;

import javax.imageio.stream.ImageInputStreamImpl;

/** Bytes in memory as a decoder reads them, without a copy of them on the disk. */
final class MemoryStream extends ImageInputStreamImpl {
  private final byte[] bytes;

  MemoryStream(byte[] bytes) {
    this.bytes = bytes;
  }

  @Override
  public int read() {
    bitOffset = 0;
    return streamPos < bytes.length ? bytes[(int) streamPos++] & 0xff : -1;
  }

  @Override
  public int read(byte[] into, int from, int most) {
    bitOffset = 0;
    if (most == 0) {
      return 0;
    }
    int count = (int) Math.min(most, bytes.length - streamPos);
    if (count <= 0) {
      return -1;
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
