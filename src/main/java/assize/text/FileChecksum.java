package assize.text;

/**
 * What tells whether a file is still the one that was judged.
 *
 * @param path the file's name, with {@code /} between folders
 * @param sha256 64 hexadecimal digits (FIPS 180-4)
 * @param bytes how long the file is
 */
public record FileChecksum(String path, String sha256, long bytes) {}
