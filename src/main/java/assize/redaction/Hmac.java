package assize.redaction;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/** HMAC-SHA-256 (RFC 2104, FIPS 198-1). */
final class Hmac {
  private static final String NAME = "HmacSHA256";

  private Hmac() {}

  /** Returns 32 bytes. */
  static byte[] of(byte[] key, String text) {
    return of(key, text.getBytes(StandardCharsets.UTF_8));
  }

  static byte[] of(byte[] key, byte[] text) {
    try {
      Mac mac = Mac.getInstance(NAME);
      mac.init(new SecretKeySpec(key, NAME));
      return mac.doFinal(text);
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException(e);
    }
  }
}
