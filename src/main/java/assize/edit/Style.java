package assize.edit;

import assize.yaml.FlowYamlWriter;
import java.util.Set;

/**
 * How files of one kind are written, where YAML leaves a choice.
 *
 * @param meant names under which a number, a date or a yes or no is meant as such, and stands
 *     without quotes
 * @param brief names of lists whose groups stand in one line each where they fit
 * @param smallFrom a group that stands so many names deep goes into one line if it fits and has no
 *     groups in it; names at the top of a file stand 1 deep
 */
public record Style(Set<String> meant, Set<String> brief, int smallFrom) {
  public Style {
    meant = Set.copyOf(meant);
    brief = Set.copyOf(brief);
  }

  /** Returns what writes values on one line. */
  public FlowYamlWriter flow() {
    return FlowYamlWriter.where(meant);
  }
}
