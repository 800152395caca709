package assize.yaml;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * What is wrong with a path before any disk is asked: the same on every system, so that a record
 * made on one can be read on another, and means no other file there.
 */
public final class PortablePathCheck {
  /** The longest name of one file, in characters; common file systems hold no longer one. */
  static final int LONGEST_NAME = 255;

  /** The longest path, in characters; common systems open no longer one. */
  static final int LONGEST = 1000;

  /** What Windows takes for a device, whatever ending is behind it (from memory). */
  private static final Set<String> DEVICES =
      Set.of(
          ("con prn aux nul com0 com1 com2 com3 com4 com5 com6 com7 com8 com9 lpt0 lpt1 lpt2 lpt3"
                  + " lpt4 lpt5 lpt6 lpt7 lpt8 lpt9")
              .split(" "));

  /** Letters that look like a stroke, a backslash, a full stop or a colon, and are none. */
  private static final String LOOK_ALIKE =
      "\u2044\u2215\u29f8\uff0f\u29f5\u29f9\ufe68\uff3c\u2024\u2025\u2026\ufe52\uff0e\u2236\ufe55"
          + "\uff1a";

  /** Letters without any width that no writing needs. */
  private static final String WITHOUT_WIDTH =
      "\u00ad\u034f\u061c\u115f\u1160\u17b4\u17b5\u180e\u200b\u200e\u200f\u2060\u2061\u2062\u2063"
          + "\u2064\u3164\uffa0";

  private PortablePathCheck() {}

  /**
   * Says what is wrong with a path.
   *
   * @param owner whose folder it has to stay in
   */
  public static Optional<String> of(String path, String owner) {
    if (path.contains("\\")) {
      return Optional.of("folders are parted by /, not by a backslash");
    }
    if (path.startsWith("/") || path.matches("(?s)[A-Za-z]:.*")) {
      return Optional.of("this path begins at the root of a disk");
    }
    if (path.startsWith("~")) {
      return Optional.of("this path leads to a home folder");
    }
    List<String> names = List.of(path.split("/", -1));
    if (names.contains("..")) {
      return Optional.of("this path leads out of " + owner + " by \"..\"");
    }
    if (path.length() > LONGEST) {
      return Optional.of("a path may have at most " + LONGEST + " characters");
    }
    return unseen(path).or(() -> names.stream().flatMap(it -> name(it).stream()).findFirst());
  }

  private static Optional<String> unseen(String path) {
    return path.codePoints()
        .filter(c -> LOOK_ALIKE.indexOf(c) >= 0 || WITHOUT_WIDTH.indexOf(c) >= 0)
        .mapToObj(
            c ->
                String.format(Locale.ROOT, "U+%04X stands in this path, ", c)
                    + (LOOK_ALIKE.indexOf(c) >= 0
                        ? "which looks like another sign"
                        : "which can't be seen"))
        .findFirst();
  }

  private static Optional<String> name(String name) {
    if (name.length() > LONGEST_NAME) {
      return Optional.of("a file's name may have at most " + LONGEST_NAME + " characters");
    }
    if (name.contains(":")) {
      return Optional.of("a colon names a disk or a part of a file on some systems");
    }
    if (!name.equals(".") && (name.endsWith(".") || name.endsWith(" "))) {
      return Optional.of("some systems leave out a full stop or space at the end of a name");
    }
    return isDevice(name)
        ? Optional.of(MessageParts.quoted(name) + " is a device on some systems, and no file")
        : Optional.empty();
  }

  /** Says whether a name, with any ending, is that of a device. */
  public static boolean isDevice(String name) {
    int dot = name.indexOf('.');
    String first = (dot < 0 ? name : name.substring(0, dot)).strip();
    return DEVICES.contains(first.toLowerCase(Locale.ROOT));
  }
}
