package assize.report.dossier;

import assize.report.view.DisputeView;
import assize.report.view.EvidenceView;
import assize.report.view.FileView;
import assize.report.view.HazardView;
import assize.report.view.ReportHeaderView;
import java.util.List;

/**
 * One item on which sources differ, written up so that both sides can sign it; an empty text stands
 * for what is not said.
 *
 * @param possible the points that the item can earn
 * @param look what to look at, by the standard
 * @param notes what the standard notes
 * @param note what the owner notes, and {@code by} who saw it and when
 * @param papers measurements and documents
 * @param parts one for each aspect on which sources differ
 * @param related other items on which some of the same sources differ
 * @param copy what a copy for others masks and leaves out; empty for the owner's own
 */
public record DossierView(
    ReportHeaderView head,
    String item,
    String area,
    String possible,
    String look,
    String notes,
    List<HazardView> hazards,
    String afterHazards,
    String note,
    String by,
    List<EvidenceView> papers,
    List<Part> parts,
    List<Related> related,
    List<FileView> files,
    String copy) {
  public DossierView {
    hazards = List.copyOf(hazards);
    papers = List.copyOf(papers);
    parts = List.copyOf(parts);
    related = List.copyOf(related);
    files = List.copyOf(files);
  }

  /** Returns the same, as the copy for others. */
  public DossierView asCopy(String copy) {
    return new DossierView(
        head,
        item,
        area,
        possible,
        look,
        notes,
        hazards,
        afterHazards,
        note,
        by,
        papers,
        parts,
        related,
        files,
        copy);
  }

  /**
   * One aspect.
   *
   * @param unheard what no source speaks of, one sentence each
   */
  public record Part(DisputeView dispute, List<String> unheard) {
    public Part {
      unheard = List.copyOf(unheard);
    }
  }

  /**
   * Another item.
   *
   * @param shared how many of the same witnesses speak there, in words
   */
  public record Related(String item, String aspect, String state, String shared) {}
}
