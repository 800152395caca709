package assize.edit;

import assize.text.Span;
import java.util.List;

/**
 * A change that the person makes better, since the text is written in a way that leaves no safe
 * place for it.
 *
 * @param path names, the outermost first
 * @param at where to write it
 * @param write what to write there
 * @param why what keeps the program from writing it
 */
public record ManualEdit(List<String> path, Span at, String write, String why) {
  public ManualEdit {
    path = List.copyOf(path);
  }
}
