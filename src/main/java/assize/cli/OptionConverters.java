package assize.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import picocli.CommandLine.TypeConversionException;

/** Reads the words of a command line that stand for something else than text. */
final class OptionConverters {
  private OptionConverters() {}

  static Path path(String text) {
    if (text.isEmpty()) {
      throw new TypeConversionException("this is empty; name a file or folder");
    }
    try {
      return Path.of(text);
    } catch (InvalidPathException e) {
      throw new TypeConversionException(IoErrorMessages.unnameable(text));
    }
  }

  static LocalDate day(String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeException e) {
      throw new TypeConversionException("write a day of the calendar, as in 2026-10-03");
    }
  }
}
