package assize.report.view;

/** A file and its fingerprint. */
public record FileView(String path, String sha256, String role) {}
