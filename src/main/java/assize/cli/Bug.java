package assize.cli;

import java.nio.file.Path;
import java.util.function.Supplier;

/** A mistake of the program, met while it worked on one file. */
final class Bug extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String file;

  private Bug(Path file, Throwable cause) {
    super(cause);
    this.file = RecordFileFinder.shown(file);
  }

  String file() {
    return file;
  }

  /**
   * Works on a file.
   *
   * @throws Bug if what is thrown is neither said to a person as it is nor names a file already
   */
  static <T> T in(Path file, Supplier<T> work) {
    try {
      return work.get();
    } catch (OutOfMemoryError e) {
      throw e;
    } catch (RuntimeException | Error e) {
      if (e instanceof Bug || IoErrorMessages.isSaid(e)) {
        throw e;
      }
      throw new Bug(file, e);
    }
  }
}
