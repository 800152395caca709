package assize.ruleset;

import assize.diagnostic.Code;
import assize.evidence.Claim;
import assize.schema.Fields;
import assize.schema.Form;
import assize.schema.Key;
import assize.schema.Values;
import assize.text.Fingerprint;
import assize.yaml.InsideFolder;
import assize.yaml.NamedFiles;
import assize.yaml.Node;
import java.util.List;
import java.util.Optional;

/** Reads what sources show, and looks whether the files are there. */
final class ClaimPhotos {
  static final Key PHOTO =
      Key.may("photo", Form.visible("pictures/drawing-204.png"), "A picture of what it shows.");
  static final Key CAPTION = Key.may("caption", Form.visible(), "What the picture shows.");

  private final NamedFiles files;
  private final Values values;

  /**
   * Begins with no photo.
   *
   * @param folder the rule set's folder; empty: files are not looked for
   */
  ClaimPhotos(Optional<InsideFolder> folder, Values values) {
    this.files = new NamedFiles(folder, values.problems());
    this.values = values;
  }

  /** Reads {@code photo} with its {@code caption}, which may be missing. */
  Optional<Claim.Photo> read(Fields claim) {
    Optional<Node.Entry> photo = claim.get(PHOTO);
    Optional<Node.Entry> caption = claim.get(CAPTION);
    if (photo.isEmpty()) {
      caption.ifPresent(
          it ->
              values
                  .problems()
                  .add(
                      Code.MISSING_KEY,
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
  List<Fingerprint> fingerprints() {
    return files.fingerprints();
  }
}
