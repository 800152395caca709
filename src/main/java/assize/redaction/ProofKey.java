package assize.redaction;

import assize.text.Parsed;
import java.util.Arrays;
import java.util.HexFormat;

/** What the hash of one masked number is made with, and of no other. */
public final class ProofKey {
  private final byte[] bytes;

  ProofKey(byte[] bytes) {
    this.bytes = bytes.clone();
  }

  /** Reads a key as it was written down or told, capitals or not, dashes or spaces between. */
  public static Parsed<ProofKey> read(String words) {
    return ProofCode.read(words).map(ProofKey::new);
  }

  /** Returns its proof code: 13 groups of 5 letters and digits. */
  public String proofCode() {
    return ProofCode.of(bytes);
  }

  /** Returns the hash of a number, however it is spaced: 64 hexadecimal digits. */
  public String hash(String number) {
    return HexFormat.of().formatHex(Hmac.of(bytes, NormalizedText.of(number).toString()));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ProofKey that && Arrays.equals(bytes, that.bytes);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(bytes);
  }
}
