package assize.fault;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;

/** What happens to a disk from one step of writing on. */
enum Fault {
  /** Nothing; the steps are counted. */
  NONE,

  /**
   * The program is killed: half of what is being written is there, and no later step comes to pass,
   * not even one that would clear away.
   */
  KILLED,

  /** The program ends there and then, for good; the process is gone. */
  HALTED,

  /** The disk is full: half of what is being written fits. What takes no room goes on. */
  FULL,

  /** That one step is not permitted. */
  DENIED,

  /** From here on nothing can be written, nor cleared away. */
  READ_ONLY;

  /** Ends a run as a kill does: whatever the program does after it reaches no disk. */
  static final class Killed extends Error {
    private static final long serialVersionUID = 1L;
  }

  /** What a step does to a disk. */
  enum Step {
    /** Takes room: a new file, a folder, a second name, bytes. */
    GROW,
    /** Takes none: a move, a deletion, a permission. */
    KEEP
  }

  /** Fails as the system does. */
  void fail(Path path, Step step, boolean first, boolean bytes) throws IOException {
    switch (this) {
      case NONE -> {}
      case KILLED -> throw new Killed();
      case HALTED -> Runtime.getRuntime().halt(137);
      case FULL -> {
        if (step == Step.GROW) {
          throw full(path, bytes);
        }
      }
      case DENIED -> {
        if (first && !bytes) {
          throw new AccessDeniedException(path.toString());
        }
      }
      case READ_ONLY -> {
        if (!bytes) {
          throw new FileSystemException(path.toString(), null, "Read-only file system");
        }
      }
    }
  }

  /** A write that fails bears no file's name; the other calls do. */
  private static IOException full(Path path, boolean bytes) {
    String reason = "No space left on device";
    return bytes ? new IOException(reason) : new FileSystemException(path.toString(), null, reason);
  }
}
