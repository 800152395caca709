package assize.cli;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The names of part files: they tell which process writes them, and whether it still does. */
final class TempFileName {
  private static final Pattern OURS =
      Pattern.compile("\\.assize-(\\d{1,18})-(\\d{1,18})-\\d{1,18}\\.part");

  /** Systems tell the start of a process from the clock, which may have been put right since. */
  private static final Duration SAME_START = Duration.ofSeconds(10);

  private TempFileName() {}

  static String next(long count) {
    ProcessHandle own = ProcessHandle.current();
    return ".assize-" + own.pid() + "-" + started(own).toEpochMilli() + "-" + count + ".part";
  }

  /** Returns what keeps a new file from everybody but its owner, where the disk knows owners. */
  static FileAttribute<?>[] forOwnerAlone(Path beside) {
    return beside.getFileSystem().supportedFileAttributeViews().contains("posix")
        ? new FileAttribute<?>[] {
          PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))
        }
        : new FileAttribute<?>[0];
  }

  private static Instant started(ProcessHandle process) {
    return process.info().startInstant().orElse(Instant.EPOCH);
  }

  /** Deletes the part files of processes that are no more. */
  static void clearStale(Path folder) throws IOException {
    try (DirectoryStream<Path> all = Files.newDirectoryStream(folder, ".assize-*.part")) {
      for (Path path : all) {
        if (Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS)
            && isStale(path.getFileName().toString())) {
          Files.deleteIfExists(path);
        }
      }
    } catch (java.nio.file.DirectoryIteratorException e) {
      throw e.getCause();
    }
  }

  private static boolean isStale(String name) {
    Matcher ours = OURS.matcher(name);
    if (!ours.matches()) {
      return false;
    }
    Instant start = Instant.ofEpochMilli(Long.parseLong(ours.group(2)));
    Optional<ProcessHandle> writer = ProcessHandle.of(Long.parseLong(ours.group(1)));
    return writer
        .filter(ProcessHandle::isAlive)
        .filter(
            process -> Duration.between(start, started(process)).abs().compareTo(SAME_START) < 0)
        .isEmpty();
  }
}
