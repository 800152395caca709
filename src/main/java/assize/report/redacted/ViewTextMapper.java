package assize.report.redacted;

import assize.report.chart.Chart;
import assize.report.dossier.DossierView;
import assize.report.results.ResultsRowView;
import assize.report.vehicle.RedactionsView;
import assize.report.vehicle.ReportView;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Builds finished views anew with each of their texts changed. Every text is changed unless it is
 * named here as one that nobody reads, so that a new one is never forgotten.
 */
final class ViewTextMapper {
  /** What leads from one place of a page to another. */
  static final Set<String> NAMES = Set.of("*.anchor", "*.itemAnchor", "Chart.id");

  /** By what a page finds a picture. */
  static final Set<String> KEYS = Set.of("EvidenceView.id");

  /** Classes of the style sheet, coordinates, colors and the digests of files. */
  static final Set<String> KEPT =
      Set.of(
          "*.sha256",
          "*.swatches",
          "AreaView.mark",
          "Choice.mark",
          "ResultsRowView.builtKey",
          "ResultsRowView.likelyKey",
          "ResultsRowView.awardKey",
          "ResultsRowView.pointsAtStakeKey",
          "ResultsRowView.notShownKey",
          "ResultsRowView.judgedKey",
          "ItemView.marks",
          "VerdictView.shape",
          "Box.x",
          "Box.y",
          "Box.width",
          "Box.height",
          "Box.look",
          "Path.d",
          "Path.look",
          "Label.x",
          "Label.y",
          "Label.anchor",
          "Label.look");

  private final Changes changes;

  private ViewTextMapper(Changes changes) {
    this.changes = changes;
  }

  /** What becomes of texts. */
  interface Changes {
    /** Returns what a text becomes. */
    String text(String text);

    /** Returns what the name of a place becomes: another for each. */
    String name(String name);

    /** Returns what the key of a picture becomes: another for each. */
    String key(String key);
  }

  /** Returns a view with its texts changed. */
  static ReportView of(ReportView view, Changes changes) {
    return (ReportView) new ViewTextMapper(changes).record(view);
  }

  static RedactionsView of(RedactionsView view, Changes changes) {
    return (RedactionsView) new ViewTextMapper(changes).record(view);
  }

  static DossierView of(DossierView view, Changes changes) {
    return (DossierView) new ViewTextMapper(changes).record(view);
  }

  static ResultsRowView of(ResultsRowView view, Changes changes) {
    return (ResultsRowView) new ViewTextMapper(changes).record(view);
  }

  private Object value(Object value, Record owner, String component) {
    if (value instanceof String text) {
      return text(text, owner, component);
    }
    if (value instanceof List<?> list) {
      return list.stream().map(one -> value(one, owner, component)).toList();
    }
    if (value instanceof Optional<?> optional) {
      return optional.map(one -> value(one, owner, component));
    }
    if (value instanceof Record record) {
      return record(record);
    }
    if (value instanceof Boolean || value instanceof Integer) {
      return value;
    }
    throw new IllegalStateException(
        owner.getClass().getName() + "." + component + " holds what is no text, list or record");
  }

  private String text(String text, Record owner, String component) {
    if (is(KEPT, owner.getClass(), component)) {
      return text;
    }
    if (is(KEYS, owner.getClass(), component)) {
      return changes.key(text);
    }
    return is(NAMES, owner.getClass(), component) ? changes.name(text) : changes.text(text);
  }

  /** Says whether a component is among those named, for its own class or for all. */
  static boolean is(Set<String> names, Class<?> owner, String component) {
    boolean everywhere = names.contains("*." + component) && owner != Chart.Label.class;
    return everywhere || names.contains(owner.getSimpleName() + "." + component);
  }

  private Record record(Record record) {
    RecordComponent[] components = record.getClass().getRecordComponents();
    Class<?>[] types = Stream.of(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
    Object[] values =
        Arrays.stream(components)
            .map(one -> value(read(one, record), record, one.getName()))
            .toArray();
    try {
      return record.getClass().getDeclaredConstructor(types).newInstance(values);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Object read(RecordComponent component, Record record) {
    try {
      return component.getAccessor().invoke(record);
    } catch (IllegalAccessException | InvocationTargetException e) {
      throw new IllegalStateException(e);
    }
  }
}
