package assize.cli;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.image.BlackoutBox;
import assize.image.Photo;
import assize.text.Parsed;
import assize.text.Sha256;
import assize.text.Span;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.FutureTask;
import java.util.concurrent.Semaphore;

/**
 * Reads the pictures that pages show: several at once, large ones one after another, each once
 * however often it is wanted, and with the same result whichever is ready first.
 */
final class ImageLoader {
  /** How much of files is held at once, in megabytes, and of decoded pixels, in millions. */
  private static final int BUDGET = 32;

  private static final int MILLION = 1_000_000;

  private final Semaphore files = new Semaphore(BUDGET, true);
  private final Semaphore pixels = new Semaphore(BUDGET, true);
  private final Map<Content, FutureTask<Parsed<Photo>>> decoded = new ConcurrentHashMap<>();

  private ImageLoader() {}

  /**
   * A picture that a page wants to show.
   *
   * @param key by which the page finds it
   * @param at where its file is named
   * @param words what it is, as messages call it
   * @param covered parts of it that are painted over
   */
  record ImageRequest(String key, Path file, Span at, String words, List<BlackoutBox> covered) {
    ImageRequest {
      covered = List.copyOf(covered);
    }

    private Source source() {
      return new Source(file, covered);
    }

    private String name() {
      Path last = file.getFileName();
      return last == null ? "" : last.toString();
    }
  }

  /** Where a picture comes from, and what is painted over in it. */
  private record Source(Path file, List<BlackoutBox> covered) {}

  /** What a picture is made of: the digest of its file, and what is painted over in it. */
  private record Content(String digest, List<BlackoutBox> covered) {}

  /**
   * What was read, in the order in which it was wanted.
   *
   * @param shown by key
   * @param loadErrors why a picture can't be shown, by key
   * @param found what is wrong or doubtful
   */
  record Read(Map<String, Photo> shown, Map<String, String> loadErrors, List<Diagnostic> found) {}

  /** Reads pictures; none is left out silently. */
  static Read read(List<ImageRequest> wanted) {
    ImageLoader pictures = new ImageLoader();
    ExecutorService threads =
        Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
    try {
      Map<Source, Future<Parsed<Photo>>> begun = new HashMap<>();
      List<Future<Parsed<Photo>>> read = new ArrayList<>();
      for (ImageRequest one : wanted) {
        read.add(
            begun.computeIfAbsent(one.source(), it -> threads.submit(() -> pictures.photo(it))));
      }
      Read all = new Read(new LinkedHashMap<>(), new LinkedHashMap<>(), new ArrayList<>());
      for (int i = 0; i < wanted.size(); i++) {
        add(all, wanted.get(i), read.get(i).get());
      }
      return all;
    } catch (ExecutionException | InterruptedException e) {
      throw new IllegalStateException(e);
    } finally {
      threads.shutdownNow();
    }
  }

  private static void add(Read all, ImageRequest one, Parsed<Photo> read) {
    read.match(
        photo -> {
          all.shown().put(one.key(), photo);
          photo
              .misnamed(one.name())
              .ifPresent(
                  words ->
                      all.found()
                          .add(
                              Diagnostic.of(
                                      DiagnosticCode.PHOTO_MISNAMED,
                                      one.at(),
                                      one.words() + ": " + words,
                                      "it is shown all the same; rename the file")
                                  .subjects(one.key())));
          return true;
        },
        bad -> {
          all.loadErrors().put(one.key(), bad.reason());
          all.found()
              .add(
                  Diagnostic.of(
                      DiagnosticCode.PHOTO_CANNOT_BE_SHOWN,
                      one.at(),
                      one.words() + ": " + bad.reason()));
          return false;
        });
  }

  private Parsed<Photo> photo(Source source) throws InterruptedException, ExecutionException {
    try {
      long length = Files.size(source.file());
      if (length > Photo.MOST_BYTES) {
        return Photo.tooLong(length);
      }
      int held = share(length);
      files.acquire(held);
      try {
        FutureTask<Parsed<Photo>> task = task(Files.readAllBytes(source.file()), source.covered());
        task.run();
        return task.get();
      } finally {
        files.release(held);
      }
    } catch (IOException e) {
      return Parsed.bad("the file can't be read; look whether it is still there", 0, 0);
    }
  }

  /** Returns the one task for all files of the same bytes; only the first run of it decodes. */
  private FutureTask<Parsed<Photo>> task(byte[] file, List<BlackoutBox> covered) {
    Parsed<Photo.Opened> head = Photo.open(file);
    return decoded.computeIfAbsent(
        new Content(Sha256.of(file), covered),
        it -> new FutureTask<>(() -> head.then(opened -> decoded(opened, it.covered()))));
  }

  private Parsed<Photo> decoded(Photo.Opened opened, List<BlackoutBox> covered) {
    int held = share(opened.pixels());
    pixels.acquireUninterruptibly(held);
    try {
      return opened.photo(covered);
    } finally {
      pixels.release(held);
    }
  }

  private static int share(long of) {
    return (int) Math.min(BUDGET, 1 + of / MILLION);
  }
}
