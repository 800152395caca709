package assize.yaml;

import assize.diagnostic.Code;
import assize.diagnostic.Diagnostic;
import assize.text.SourceFile;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;

/** Turns bytes into text, strictly: nothing is replaced silently. */
final class Utf8 {
  private Utf8() {}

  /** Decodes a file; a byte order mark at its beginning is left out. */
  static Optional<SourceFile> decode(byte[] bytes, String shown, Problems problems) {
    if (bytes.length >= 2 && (startsWith(bytes, 0xFF, 0xFE) || startsWith(bytes, 0xFE, 0xFF))) {
      problems.add(
          Diagnostic.of(
              Code.NOT_UTF8,
              new SourceFile(shown, "").span(0, 0),
              "this file is UTF-16; save it as UTF-8"));
      return Optional.empty();
    }
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    CoderResult result = StandardCharsets.UTF_8.newDecoder().decode(in, out, true);
    String text = out.flip().toString();
    if (result.isError()) {
      SourceFile file = new SourceFile(shown, text);
      int at = text.length();
      problems.add(
          Diagnostic.of(
              Code.NOT_UTF8,
              file.span(at, at),
              String.format(
                  Locale.ROOT,
                  "this file is not UTF-8: byte %02X at offset %d, in line %d; save it as UTF-8",
                  bytes[in.position()],
                  in.position(),
                  file.lineAt(at))));
      return Optional.empty();
    }
    boolean marked = text.startsWith("\uFEFF");
    return Optional.of(new SourceFile(shown, marked ? text.substring(1) : text));
  }

  private static boolean startsWith(byte[] bytes, int first, int second) {
    return bytes[0] == (byte) first && bytes[1] == (byte) second;
  }
}
