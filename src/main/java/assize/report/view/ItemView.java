package assize.report.view;

import java.util.List;
import java.util.Optional;

/**
 * One item: what was expected, by whom, what was found, and what it earns; an empty text stands for
 * what is not said.
 *
 * @param marks the classes by which choices find it
 * @param earned likely points
 * @param range low to high; empty where nothing is open
 * @param owner what the owner holds of aspects on which sources do not differ
 * @param spans build days within which it is judged alike
 */
public record ItemView(
    String anchor,
    String title,
    VerdictView verdict,
    String marks,
    String earned,
    String range,
    String possible,
    String look,
    String notes,
    List<HazardView> hazards,
    List<Span> spans,
    String note,
    String by,
    List<EvidenceView> evidence,
    List<OwnerView> owner,
    Optional<DepartureView> departure) {
  public ItemView {
    hazards = List.copyOf(hazards);
    spans = List.copyOf(spans);
    evidence = List.copyOf(evidence);
    owner = List.copyOf(owner);
  }

  /**
   * Days within which it is judged alike.
   *
   * @param days empty where it is judged alike on all build days
   * @param applies empty where it plainly applies
   * @param sums the arithmetic, one step in each line
   */
  public record Span(String days, String applies, List<AspectView> aspects, List<String> sums) {
    public Span {
      aspects = List.copyOf(aspects);
      sums = List.copyOf(sums);
    }

    /** Says whether any color is drawn. */
    public boolean drawsColors() {
      return aspects.stream()
          .anyMatch(
              aspect ->
                  !aspect.swatches().isEmpty()
                      || aspect.expected().stream().anyMatch(it -> !it.swatches().isEmpty()));
    }
  }

  /**
   * One aspect.
   *
   * @param dispute where it is written up, if sources differ
   * @param swatches the colors found, as a screen can show them
   * @param why the values compared
   */
  public record AspectView(
      String aspect,
      VerdictView verdict,
      String state,
      Optional<LinkView> dispute,
      String found,
      List<String> swatches,
      List<Expected> expected,
      String earned,
      String possible,
      List<String> why,
      List<String> sums) {
    public AspectView {
      swatches = List.copyOf(swatches);
      expected = List.copyOf(expected);
      why = List.copyOf(why);
      sums = List.copyOf(sums);
    }
  }

  /**
   * A value that is held to be right, and who holds it.
   *
   * @param swatches its colors, as a screen can show them
   */
  public record Expected(
      String words, List<String> swatches, List<CiteView> sources, boolean scored) {
    public Expected {
      swatches = List.copyOf(swatches);
      sources = List.copyOf(sources);
    }
  }
}
