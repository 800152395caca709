package assize.cli;

import assize.text.Sha256;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Takes away the photos of an earlier run that a page no longer shows. A file is deleted only where
 * the earlier page named it and its name still tells what is in it; nothing is, behind a link.
 *
 * @param folder where the photos lie, with no link in it
 * @param names those that the earlier page named
 */
record OldPhotos(Path page, Path folder, Set<String> names) implements Runnable {
  private static final String NAME = "[0-9a-f]{16}\\.(?:png|jpg)";
  private static final int PIECE = 1 << 16;

  /** More than an address on a page is long. */
  private static final int OVERLAP = 512;

  OldPhotos {
    names = Set.copyOf(names);
  }

  /**
   * Looks which photos the page names that stands there now.
   *
   * @param kept those that are still shown
   */
  static Runnable of(Path page, Path folder, Set<String> kept) {
    try {
      Path real = AtomicFileWriter.folderOf(page).toRealPath().resolve(folder.getFileName());
      if (!isReal(real) || !AtomicFileWriter.isPage(page)) {
        return () -> {};
      }
      Set<String> there = there(real);
      there.removeAll(kept);
      Set<String> names = there.isEmpty() ? there : named(page, real, there);
      return names.isEmpty() ? () -> {} : new OldPhotos(page, real, names);
    } catch (NoSuchFileException e) {
      return () -> {};
    } catch (IOException e) {
      throw AtomicFileWriter.cannotWrite(folder, e);
    }
  }

  @Override
  public void run() {
    try {
      // The page that stands there may be of another run, which came a moment later.
      Set<String> shown = named(page, folder, names);
      boolean deleted = false;
      for (String name : names) {
        if (!shown.contains(name) && isReal(folder) && isNamedByContent(folder.resolve(name))) {
          delete(folder.resolve(name));
          deleted = true;
        }
      }
      if (deleted && isEmpty(folder)) {
        delete(folder);
      }
    } catch (IOException e) {
      throw AtomicFileWriter.cannotWrite(folder, e);
    }
  }

  private static boolean isEmpty(Path folder) throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.findAny().isEmpty();
    }
  }

  private static void delete(Path path) {
    try {
      Files.deleteIfExists(path);
    } catch (DirectoryNotEmptyException e) {
      // another run has just put a photo into it
    } catch (IOException e) {
      throw AtomicFileWriter.cannotWrite(path, e);
    }
  }

  private static boolean isReal(Path folder) throws IOException {
    return Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)
        && folder.equals(folder.toRealPath());
  }

  private static boolean isNamedByContent(Path file) throws IOException {
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      return false;
    }
    MessageDigest digest = Sha256.digest();
    try (InputStream in = new DigestInputStream(Files.newInputStream(file), digest)) {
      in.transferTo(OutputStream.nullOutputStream());
    }
    String name = String.valueOf(file.getFileName());
    return HexFormat.of()
        .formatHex(digest.digest())
        .startsWith(name.substring(0, name.indexOf('.')));
  }

  private static Set<String> there(Path folder) throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(it -> it.getFileName().toString())
          .filter(it -> it.matches(NAME))
          .collect(Collectors.toCollection(TreeSet::new));
    }
  }

  /** Returns which of some photos a page shows; however long it is, little of it is held. */
  private static Set<String> named(Path page, Path folder, Set<String> asked) throws IOException {
    Pattern address =
        Pattern.compile(" src=\"" + Pattern.quote(folder.getFileName() + "/") + "(" + NAME + ")\"");
    Set<String> names = new TreeSet<>();
    try (InputStream in = Files.newInputStream(page)) {
      String text = "";
      byte[] piece = in.readNBytes(PIECE);
      while (piece.length > 0) {
        text += new String(piece, StandardCharsets.ISO_8859_1);
        Matcher matcher = address.matcher(text);
        while (matcher.find()) {
          if (asked.contains(matcher.group(1))) {
            names.add(matcher.group(1));
          }
        }
        text = text.substring(Math.max(0, text.length() - OVERLAP));
        piece = in.readNBytes(PIECE);
      }
    }
    return names;
  }
}
