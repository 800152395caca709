package assize.aspect;

import assize.schema.ScalarFormat;
import assize.schema.ValueSchema;
import assize.yaml.Node;
import java.util.List;
import java.util.Optional;

/** Whether it is there, or works. */
public final class YesNo extends Kind {
  private final String yes;
  private final String no;
  private final List<Control.Choice> choices;
  private final String question;

  YesNo(String yes, String no, Control.Choice there, Control.Choice not, String question) {
    this.yes = yes;
    this.no = no;
    this.choices = List.of(there, not);
    this.question = question;
  }

  static Kind present() {
    return new YesNo(
        "present",
        "not present",
        new Control.Choice("yes", "there", ""),
        new Control.Choice("no", "not there", ""),
        "should it be there?");
  }

  static Kind works() {
    return new YesNo(
        "works",
        "does not work",
        new Control.Choice("yes", "works", ""),
        new Control.Choice("no", "does not work", ""),
        "should it work?");
  }

  @Override
  public ValueSchema right() {
    return ScalarFormat.yesNo();
  }

  @Override
  public ValueSchema seen() {
    return ScalarFormat.yesNo();
  }

  @Override
  public List<Expectation> right(Node.Entry entry, Reader reader) {
    return reader.values().yesNo(Optional.of(entry)).<Expectation>map(Right::new).stream().toList();
  }

  @Override
  public Optional<Finding> seen(Node.Entry entry, Reader reader) {
    return reader.values().yesNo(Optional.of(entry)).map(Found::new);
  }

  @Override
  public Control.Kind control() {
    return Control.Kind.YES_NO;
  }

  @Override
  protected List<Control.Choice> choices(Place at) {
    return choices;
  }

  @Override
  public String question(Aspect aspect) {
    return question;
  }

  @Override
  public Holds cell() {
    return Holds.YES_NO;
  }

  private static String words(boolean answer, Place at) {
    YesNo kind = (YesNo) at.aspect().kind();
    return answer ? kind.yes : kind.no;
  }

  /** Whether it has to be there, or to work. */
  public record Right(boolean yes) implements Expectation {
    @Override
    public String key() {
      return yes ? "yes" : "no";
    }

    @Override
    public Comparison against(Finding found, Setting setting) {
      if (!(found instanceof Found answer)) {
        return Comparison.unlike();
      }
      Why why = new Why(answer.yes);
      return answer.yes == yes ? Comparison.correct(why) : Comparison.incorrect(why);
    }

    @Override
    public String words(Place at) {
      return YesNo.words(yes, at);
    }
  }

  /** Whether it is there, or works. */
  public record Found(boolean yes) implements Finding {
    @Override
    public String words(Place at) {
      return YesNo.words(yes, at);
    }

    @Override
    public Written written() {
      return Written.plain(yes ? "yes" : "no");
    }
  }

  private record Why(boolean yes) implements Reason {
    @Override
    public String words(Place at) {
      return "found: " + YesNo.words(yes, at);
    }

    @Override
    public String besides(Place at) {
      return "";
    }
  }
}
