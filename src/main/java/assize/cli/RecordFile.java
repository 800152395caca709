package assize.cli;

import assize.diagnostic.Code;
import assize.diagnostic.Diagnostic;
import assize.merge.Merged;
import assize.text.Fingerprint;
import assize.text.Sha256;
import assize.yaml.RecordText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.util.List;
import java.util.Optional;
import java.util.Set;

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
   * @throws OutputFile.CannotWrite if the disk does not allow it
   */
  boolean replace(Merged merged, Inputs inputs) {
    try (Outputs outputs = new Outputs()) {
      Path real = path.toRealPath();
      byte[] before = Files.readAllBytes(real);
      String mark = RecordText.isMarked(before) ? "\uFEFF" : "";
      outputs.stage(real, mark + merged.applied().edited().text());
      if (!isWhatWasRead(Files.readAllBytes(real), merged)) {
        inputs.report(List.of(changed(merged)), false);
        return false;
      }
      Optional<Set<PosixFilePermission>> permissions = permissions(real);
      outputs.place();
      if (permissions.isPresent()) {
        Files.setPosixFilePermissions(real, permissions.get());
      }
      return true;
    } catch (IOException e) {
      throw OutputFile.cannotWrite(path, e);
    }
  }

  private static boolean isWhatWasRead(byte[] now, Merged merged) {
    Fingerprint read = merged.mine().record().files().get(0);
    return read.bytes() == now.length && read.sha256().equals(Sha256.of(now));
  }

  private static Diagnostic changed(Merged merged) {
    return Diagnostic.of(
        Code.CHANGED_MEANWHILE,
        merged.mine().record().at(),
        "this file was changed while it was being merged; nothing is written",
        "merge again");
  }

  private static Optional<Set<PosixFilePermission>> permissions(Path file) throws IOException {
    return file.getFileSystem().supportedFileAttributeViews().contains("posix")
        ? Optional.of(Files.getPosixFilePermissions(file))
        : Optional.empty();
  }
}
