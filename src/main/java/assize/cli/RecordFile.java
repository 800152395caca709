package assize.cli;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.merge.MergeReport;
import assize.text.FileChecksum;
import assize.text.Sha256;
import assize.yaml.Document;
import java.io.Closeable;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;

/** The file of a person's record, which is replaced only while it is what was read. */
final class RecordFile {
  private final Path path;

  RecordFile(Path path) {
    this.path = path;
  }

  /**
   * Writes a record's changed text, whole or not at all.
   *
   * @return whether it was written; it is not where the file is no longer what was read
   * @throws AtomicFileWriter.CannotWrite if the disk does not allow it
   */
  @SuppressWarnings("try") // the lock is held, and nothing is asked of it
  boolean replace(MergeReport merged, InputLoader inputs) {
    try (OutputTransaction outputs = new OutputTransaction()) {
      Path real = path.toRealPath();
      try (Closeable alone = alone(real)) {
        byte[] before = Files.readAllBytes(real);
        if (!isWhatWasRead(before, merged)) {
          inputs.report(List.of(changed(merged)), false);
          return false;
        }
        String mark = Document.isMarked(before) ? "\uFEFF" : "";
        outputs.stageOwn(real, mark + merged.applied().edited().text());
        if (!isWhatWasRead(Files.readAllBytes(real), merged)) {
          inputs.report(List.of(changed(merged)), false);
          return false;
        }
        outputs.commit();
        return true;
      }
    } catch (IOException e) {
      throw AtomicFileWriter.cannotWrite(path, e);
    }
  }

  /**
   * Keeps another run from replacing the file between its look at it and ours: whoever waits here
   * holds the file that was replaced, and finds another in its place. Where an open file can't be
   * replaced nothing is locked.
   */
  private static Closeable alone(Path real) throws IOException {
    if (!real.getFileSystem().supportedFileAttributeViews().contains("posix")) {
      return () -> {};
    }
    FileChannel channel = FileChannel.open(real, StandardOpenOption.READ, StandardOpenOption.WRITE);
    try {
      channel.lock();
      return channel;
    } catch (IOException e) {
      // Some disks know no locks.
      return channel;
    }
  }

  private static boolean isWhatWasRead(byte[] now, MergeReport merged) {
    FileChecksum read = merged.mine().record().files().get(0);
    return read.bytes() == now.length && read.sha256().equals(Sha256.of(now));
  }

  private static Diagnostic changed(MergeReport merged) {
    return Diagnostic.of(
        DiagnosticCode.CHANGED_DURING_MERGE,
        merged.mine().record().at(),
        "this file was changed while it was being merged; nothing is written",
        "merge again");
  }
}
