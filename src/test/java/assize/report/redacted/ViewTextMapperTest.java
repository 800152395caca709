package assize.report.redacted;

import static org.assertj.core.api.Assertions.assertThat;

import assize.judge.Judge;
import assize.judgment.Judgment;
import assize.redaction.RedactedJudgment;
import assize.redaction.TextMasker;
import assize.report.SampleJudgments;
import assize.report.vehicle.ReportView;
import assize.report.vehicle.ReportViewFactory;
import assize.report.view.ItemView;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class ViewTextMapperTest {
  /** All texts of views that stay as they are; a new one is to be looked at by somebody. */
  private static final Set<String> STAY =
      Set.of(
          "AreaView.mark",
          "AspectView.swatches",
          "Box.height",
          "Box.look",
          "Box.width",
          "Box.x",
          "Box.y",
          "Choice.mark",
          "EvidenceView.sha256",
          "Expected.swatches",
          "FileView.sha256",
          "ItemView.marks",
          "Label.anchor",
          "Label.look",
          "Label.x",
          "Label.y",
          "NumberView.sha256",
          "Path.d",
          "Path.look",
          "VerdictView.shape");

  private final Set<String> texts = new TreeSet<>();
  private final Set<String> odd = new TreeSet<>();

  /** Goes through all kinds of views that a report can hold. */
  private void visit(Type type, String where, Set<Type> seen) {
    if (type instanceof ParameterizedType of) {
      boolean known = of.getRawType() == List.class || of.getRawType() == Optional.class;
      if (!known) {
        odd.add(where);
      }
      visit(of.getActualTypeArguments()[0], where, seen);
    } else if (type == String.class) {
      texts.add(where);
    } else if (type instanceof Class<?> one && one.isRecord()) {
      if (seen.add(one)) {
        for (RecordComponent part : one.getRecordComponents()) {
          visit(part.getGenericType(), one.getSimpleName() + "." + part.getName(), seen);
        }
      }
    } else if (type != boolean.class && type != int.class) {
      odd.add(where);
    }
  }

  private static boolean stays(String where, Set<String> names) {
    String owner = where.substring(0, where.indexOf('.'));
    String part = where.substring(where.indexOf('.') + 1);
    return names.contains(where) || names.contains("*." + part) && !owner.equals("Label");
  }

  @Test
  void everyKindOfViewIsMadeOfTextsListsAndRecords() {
    visit(ReportView.class, "", new HashSet<>());
    assertThat(odd).isEmpty();
    assertThat(texts)
        .contains("ReportHeaderView.vehicle", "Label.text", "NumberView.masked", "CiteView.where");
    assertThat(texts.stream().filter(it -> stays(it, ViewTextMapper.KEPT)))
        .containsExactlyElementsOf(new TreeSet<>(STAY));
  }

  /** Marks each text so that one which was not changed is noticed. */
  private static final class Marking implements ViewTextMapper.Changes {
    private int count;

    @Override
    public String text(String text) {
      count++;
      return "[" + text + "]";
    }

    @Override
    public String name(String name) {
      return name;
    }

    @Override
    public String key(String key) {
      return key;
    }
  }

  @Test
  void changesEachTextOnce() {
    ReportView view = ReportViewFactory.of(SampleJudgments.threeStretches());
    Marking marking = new Marking();
    ReportView marked = ViewTextMapper.of(view, marking);
    long marks = marked.toString().chars().filter(c -> c == '[').count();
    long lists = view.toString().chars().filter(c -> c == '[').count();
    assertThat(marking.count).isGreaterThan(500);
    long nested = view.toString().split("Optional\\[", -1).length - 1;
    assertThat(marks - lists).isGreaterThanOrEqualTo(marking.count - nested);
    assertThat(marked.head().vehicle()).isEqualTo("[" + view.head().vehicle() + "]");
    assertThat(marked.score().wide().labels().get(0).text())
        .isEqualTo("[" + view.score().wide().labels().get(0).text() + "]");
    assertThat(marked.score().wide().boxes()).isEqualTo(view.score().wide().boxes());
  }

  @Test
  void namesOfPlacesStayApartAndLeadWhereTheyLed() {
    Judgment judgment = SampleJudgments.oneStretch();
    TextMasker mask = TextMasker.of(List.of("cab-heater", "cab-lamp"), List.of("horn"));
    ReportView view =
        RedactionsViewFactory.of(
                RedactedJudgment.of(Judge.by(judgment.rules()), judgment, Optional.empty()),
                mask,
                Map.of(),
                Map.of())
            .view();
    List<String> items =
        view.areas().stream().flatMap(area -> area.items().stream()).map(ItemView::anchor).toList();
    assertThat(items).doesNotHaveDuplicates().contains("item-xxx-button");
    assertThat(items).noneMatch(it -> it.contains("heater") || it.contains("lamp"));
    assertThat(view.costs().lines()).allMatch(line -> items.contains(line.anchor()));
    MaskingTextMapper texts =
        new MaskingTextMapper(TextMasker.of(List.of("A-4388", "A-4389"), List.of()));
    assertThat(texts.name("item-a-4388")).isEqualTo("item-a-4xxx");
    assertThat(texts.name("item-a-4389")).isEqualTo("item-a-4xxx.2");
    assertThat(texts.name("item-a-4388")).isEqualTo("item-a-4xxx");
    assertThat(texts.name("papers")).isEqualTo("papers");
    assertThat(
            new MaskingTextMapper(TextMasker.of(List.of(), List.of("mill lane")))
                .name("source-mill.20.lane"))
        .isEqualTo("source-xxx");
  }
}
