package assize.cli;

import assize.image.Photo;
import assize.text.Sha256;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The folder beside a page that holds its photos, each named by what is in it; a photo's own name
 * does not travel.
 */
record PhotoFolder(Path page, Path path, Map<String, Photo> files) {
  private static final int DIGITS = 16;

  /** Returns the folder of a page, with what is to be in it. */
  static PhotoFolder of(Path page, Iterable<Photo> photos) {
    String name = String.valueOf(page.getFileName());
    Map<String, Photo> files = new LinkedHashMap<>();
    photos.forEach(photo -> files.put(name(photo), photo));
    return new PhotoFolder(
        page, page.resolveSibling(name.replaceFirst("\\.html$", "") + "-photos"), files);
  }

  /** Returns a name that the same picture always has. */
  private static String name(Photo photo) {
    String ending = photo.mediaType().equals("image/png") ? ".png" : ".jpg";
    return Sha256.of(photo.bytes()).substring(0, DIGITS) + ending;
  }

  /** Returns where a page beside it finds a photo. */
  String address(Photo photo) {
    return path.getFileName() + "/" + name(photo);
  }

  /**
   * Stages the photos.
   *
   * @throws AtomicFileWriter.CannotWrite if the folder is a link, or the disk does not allow it
   */
  void stage(OutputTransaction outputs) {
    if (!files.isEmpty() && AtomicFileWriter.isLink(path)) {
      throw AtomicFileWriter.cannotWrite(
          path, "it is a link to another place; delete the link, or name another place");
    }
    files.forEach((name, photo) -> outputs.stage(path.resolve(name), photo.bytes()));
  }

  long bytes() {
    return files.values().stream().mapToLong(photo -> photo.bytes().length).sum();
  }

  /**
   * Returns what takes away the photos that the page no longer shows; ask for it before the page is
   * replaced.
   */
  Runnable clearing() {
    return OldPhotos.of(page, path, files.keySet());
  }
}
