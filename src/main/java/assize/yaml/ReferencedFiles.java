package assize.yaml;

import assize.diagnostic.DiagnosticCode;
import assize.text.FileChecksum;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The files that a text names: whether they are there, and whether they are still the same. */
public final class ReferencedFiles {
  private final Optional<ContainedFileResolver> folder;
  private final DiagnosticCollector problems;
  private final Map<String, FileReference> found = new LinkedHashMap<>();

  /**
   * Begins with no file.
   *
   * @param folder where they lie; empty: they are not looked for
   */
  public ReferencedFiles(Optional<ContainedFileResolver> folder, DiagnosticCollector problems) {
    this.folder = folder;
    this.problems = problems;
  }

  private record FileReference(Path path, Node.Scalar named) {
    Optional<FileChecksum> checksum() {
      try {
        return Optional.of(BoundedFileReader.checksum(path, named.text()));
      } catch (IOException e) {
        return Optional.empty();
      }
    }
  }

  /** Looks whether a file is there, and reports one that is not. */
  public void look(Node.Scalar named) {
    if (folder.isEmpty() || found.containsKey(named.text())) {
      return;
    }
    Optional<Path> path = folder.get().find(named, problems);
    if (path.isPresent() && !Files.isRegularFile(path.get())) {
      problems.add(DiagnosticCode.CANNOT_OPEN_FILE, named.at(), "this is not a file");
    } else {
      path.ifPresent(it -> found.put(named.text(), new FileReference(it, named)));
    }
  }

  /** Reads them, several at once, and returns what tells whether each is still the same. */
  public List<FileChecksum> checksums() {
    List<FileReference> files = List.copyOf(found.values());
    List<Optional<FileChecksum>> read =
        files.parallelStream().map(FileReference::checksum).toList();
    List<FileChecksum> checksums = new ArrayList<>();
    for (int i = 0; i < read.size(); i++) {
      if (read.get(i).isEmpty()) {
        problems.add(
            DiagnosticCode.CANNOT_OPEN_FILE,
            files.get(i).named().at(),
            "this file can't be opened");
      }
      read.get(i).ifPresent(checksums::add);
    }
    return checksums;
  }
}
