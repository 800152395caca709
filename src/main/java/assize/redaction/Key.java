package assize.redaction;

import assize.text.Parsed;
import java.util.Arrays;
import java.util.HexFormat;

/** What opens the fingerprint of one masked number, and of no other. */
public final class Key {
  private final byte[] bytes;

  Key(byte[] bytes) {
    this.bytes = bytes.clone();
  }

  /** Reads a key as it was written down or told, capitals or not, dashes or spaces between. */
  public static Parsed<Key> read(String words) {
    return KeyWords.read(words).map(Key::new);
  }

  /** Returns its opening words: 13 groups of 5 letters and digits. */
  public String words() {
    return KeyWords.of(bytes);
  }

  /** Returns the fingerprint of a number, however it is spaced: 64 hexadecimal digits. */
  public String fingerprint(String number) {
    return HexFormat.of().formatHex(Hmac.of(bytes, Folded.of(number).toString()));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Key that && Arrays.equals(bytes, that.bytes);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(bytes);
  }
}
