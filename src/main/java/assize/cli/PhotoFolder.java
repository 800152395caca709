package assize.cli;

import assize.photo.Photo;
import assize.text.Sha256;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The folder beside a page that holds its photos, each named by what is in it; a photo's own name
 * does not travel.
 */
record PhotoFolder(Path page, Path path, Map<String, Photo> files) {
  private static final Pattern OURS = Pattern.compile("[0-9a-f]{16}\\.(png|jpg)");
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

  void stage(Outputs outputs) {
    files.forEach((name, photo) -> outputs.stage(path.resolve(name), photo.bytes()));
  }

  long bytes() {
    return files.values().stream().mapToLong(photo -> photo.bytes().length).sum();
  }

  /** Returns what takes away photos of an earlier run that the page no longer shows. */
  Runnable clearing() {
    return new Clearing(page, path, Set.copyOf(files.keySet()));
  }

  /** Little enough to be held for each of thousands; other files in the folder stay. */
  private record Clearing(Path page, Path path, Set<String> names) implements Runnable {
    @Override
    public void run() {
      for (Path old : old()) {
        try {
          Files.deleteIfExists(old);
        } catch (DirectoryNotEmptyException e) {
          // another run has just put a photo into it
        } catch (IOException e) {
          throw OutputFile.cannotWrite(old, e);
        }
      }
    }

    private List<Path> old() {
      if (!Files.isDirectory(path)) {
        return List.of();
      }
      try (Stream<Path> all = Files.list(path)) {
        Set<Path> found = all.collect(Collectors.toCollection(TreeSet::new));
        Set<Path> old =
            found.stream()
                .filter(it -> OURS.matcher(it.getFileName().toString()).matches())
                .filter(it -> !names.contains(it.getFileName().toString()))
                .filter(Files::isRegularFile)
                .collect(Collectors.toCollection(TreeSet::new));
        if (!old.isEmpty()) {
          keepShown(old);
        }
        boolean nothingLeft = !old.isEmpty() && old.equals(found);
        return Stream.concat(old.stream(), nothingLeft ? Stream.of(path) : Stream.empty()).toList();
      } catch (NoSuchFileException e) {
        return List.of();
      } catch (IOException e) {
        throw OutputFile.cannotWrite(path, e);
      }
    }

    /** The page that stands there may be of another run, which came a moment later. */
    private void keepShown(Set<Path> old) throws IOException {
      try (BufferedReader lines = Files.newBufferedReader(page)) {
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
          OURS.matcher(line).results().forEach(it -> old.remove(path.resolve(it.group())));
        }
      }
    }
  }
}
