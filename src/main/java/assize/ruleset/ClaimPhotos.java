package assize.ruleset;

import assize.diagnostic.DiagnosticCode;
import assize.evidence.Claim;
import assize.schema.MappingReader;
import assize.schema.PropertySchema;
import assize.schema.ScalarFormat;
import assize.schema.ScalarReader;
import assize.text.FileChecksum;
import assize.yaml.ContainedFileResolver;
import assize.yaml.Node;
import assize.yaml.ReferencedFiles;
import java.util.List;
import java.util.Optional;

/** Reads what sources show, and looks whether the files are there. */
final class ClaimPhotos {
  static final PropertySchema PHOTO =
      PropertySchema.may(
          "photo", ScalarFormat.visible("pictures/drawing-204.png"), "A picture of what it shows.");
  static final PropertySchema CAPTION =
      PropertySchema.may("caption", ScalarFormat.visible(), "What the picture shows.");

  private final ReferencedFiles files;
  private final ScalarReader values;

  /**
   * Begins with no photo.
   *
   * @param folder the rule set's folder; empty: files are not looked for
   */
  ClaimPhotos(Optional<ContainedFileResolver> folder, ScalarReader values) {
    this.files = new ReferencedFiles(folder, values.problems());
    this.values = values;
  }

  /** Reads {@code photo} with its {@code caption}, which may be missing. */
  Optional<Claim.Photo> read(MappingReader claim) {
    Optional<Node.Entry> photo = claim.get(PHOTO);
    Optional<Node.Entry> caption = claim.get(CAPTION);
    if (photo.isEmpty()) {
      caption.ifPresent(
          it ->
              values
                  .problems()
                  .add(
                      DiagnosticCode.MISSING_KEY,
                      it.key().at(),
                      "`caption` belongs to `photo`, which is not here",
                      "add `photo:`"));
      return Optional.empty();
    }
    Optional<Node.Scalar> file = values.visible(photo, "the name of a file");
    Optional<String> words = values.name(caption);
    file.ifPresent(files::look);
    return file.map(it -> new Claim.Photo(it.text(), words, it.at()));
  }

  /** Returns what tells whether the files that were read are still the same. */
  List<FileChecksum> checksums() {
    return files.checksums();
  }
}
