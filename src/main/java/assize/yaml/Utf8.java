package assize.yaml;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.text.SourceFile;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;

/** Turns bytes into text, strictly: nothing is replaced silently. */
public final class Utf8 {
  private Utf8() {}

  /** Decodes a file; a byte order mark at its beginning is left out. */
  public static Optional<SourceFile> decode(
      byte[] bytes, String shown, DiagnosticCollector problems) {
    Optional<String> other = WideText.of(bytes);
    if (other.isPresent()) {
      problems.add(
          Diagnostic.of(
              DiagnosticCode.NOT_UTF8,
              new SourceFile(shown, "").span(0, 0),
              "this file is " + other.get() + "; save it as UTF-8",
              "many editors offer UTF-8 under Save As, as the encoding"));
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
              DiagnosticCode.NOT_UTF8,
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
}
