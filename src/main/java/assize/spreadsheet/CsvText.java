package assize.spreadsheet;

import assize.diagnostic.DiagnosticCode;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.stream.IntStream;

/** Turns the bytes of a CSV file into text, strictly: nothing is guessed at. */
final class CsvText {
  private static final String HOW =
      "save it as \"CSV UTF-8\" in the spreadsheet, or as .xlsx, which keeps every letter";

  private CsvText() {}

  static String of(byte[] bytes) throws UnreadableTableException {
    if (begins(bytes, 0xEF, 0xBB, 0xBF)) {
      return decoded(bytes, 3, StandardCharsets.UTF_8);
    }
    if (begins(bytes, 0xFF, 0xFE)) {
      return decoded(bytes, 2, StandardCharsets.UTF_16LE);
    }
    if (begins(bytes, 0xFE, 0xFF)) {
      return decoded(bytes, 2, StandardCharsets.UTF_16BE);
    }
    if (IntStream.range(0, bytes.length).anyMatch(i -> bytes[i] == 0)) {
      throw new UnreadableTableException(
          DiagnosticCode.NOT_UTF8, "this file has zero bytes: it is no CSV in UTF-8", HOW);
    }
    return decoded(bytes, 0, StandardCharsets.UTF_8);
  }

  private static boolean begins(byte[] bytes, int... with) {
    return bytes.length >= with.length
        && IntStream.range(0, with.length).allMatch(i -> (bytes[i] & 0xFF) == with[i]);
  }

  private static String decoded(byte[] bytes, int from, Charset charset)
      throws UnreadableTableException {
    ByteBuffer in = ByteBuffer.wrap(bytes, from, bytes.length - from);
    try {
      return charset.newDecoder().decode(in).toString();
    } catch (CharacterCodingException e) {
      long line = 1 + IntStream.range(from, in.position()).filter(i -> bytes[i] == '\n').count();
      throw new UnreadableTableException(
          DiagnosticCode.NOT_UTF8,
          charset.equals(StandardCharsets.UTF_8)
              ? "this file is not UTF-8: line "
                  + line
                  + " has a letter as Windows-1252 or another older way writes it"
              : "this file begins as UTF-16 and does not go on so",
          HOW);
    }
  }
}
