package assize.report.view;

import assize.judgment.Judgment;
import assize.text.FileChecksum;
import java.util.ArrayList;
import java.util.List;

/** The files that a judgment rests on. */
public final class FileViewFactory {
  private FileViewFactory() {}

  public static List<FileView> of(Judgment judgment) {
    List<FileView> files = new ArrayList<>();
    for (FileChecksum file : judgment.rules().files()) {
      files.add(new FileView(file.path(), file.sha256(), "rule set"));
    }
    for (FileChecksum file : judgment.vehicle().files()) {
      boolean record = files.stream().noneMatch(it -> it.role().equals("record"));
      files.add(new FileView(file.path(), file.sha256(), record ? "record" : "evidence"));
    }
    files.removeIf(file -> file.sha256().isEmpty());
    return files;
  }
}
