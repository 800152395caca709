package assize.report.text;

import assize.edit.ManualEdit;
import assize.merge.MergeReport;
import assize.merge.MergeResult;
import assize.merge.RecordEditing;
import assize.merge.Side;
import assize.text.Json;
import java.util.List;

/** Writes what came of merging for other programs, as one object. */
public final class MergeJson {
  private MergeJson() {}

  /** Returns one line. */
  public static String of(MergeReport merged) {
    MergeResult merge = merged.merge();
    return Json.object()
        .text("file", merged.mine().name())
        .text("record", merged.mine().record().id())
        .texts("files", merged.theirs())
        .flag("written", merged.isWritten())
        .whole("same", merge.same())
        .objects("steps", "", merged.applied().done(), MergeJson::step)
        .objects("conflicts", "", merge.conflicts(), MergeJson::conflict)
        .objects("pending", "", merge.waiting(), MergeJson::waiting)
        .objects("vehicle_facts", "", merge.asides(), MergeJson::aside)
        .objects("manual", "", merged.applied().edited().byHand(), MergeJson::byHand)
        .toString();
  }

  private static void step(Json json, MergeResult.Step step) {
    String key = key(step.path());
    json.texts("path", step.path())
        .text("value", RecordEditing.written(key, step.shown()))
        .orNull("before", step.before().map(it -> RecordEditing.written(key, it.value())))
        .texts("places", step.from().stream().map(it -> it.at().toString()).toList());
  }

  private static void conflict(Json json, MergeResult.Conflict one) {
    String key = one.part().key();
    json.text("item", one.part().item())
        .text("key", key)
        .orNull("current", one.mine().map(it -> RecordEditing.written(key, it.value())))
        .orNull("place", one.mine().map(it -> it.at().toString()))
        .objects("incoming", "", one.theirs(), (theirs, side) -> side(theirs, key, side));
  }

  private static void side(Json json, String key, Side side) {
    json.text("file", side.from())
        .text("place", side.at().toString())
        .text("value", RecordEditing.written(key, side.value()));
  }

  private static void waiting(Json json, MergeResult.Waiting one) {
    json.texts("path", one.path()).text("reason", one.why()).orNull("missing", one.file());
    side(json, key(one.path()), one.theirs());
  }

  private static void aside(Json json, MergeResult.Aside one) {
    String key = MergeText.meaning(one.path());
    json.texts("path", one.path())
        .orNull("current", one.mine().map(it -> RecordEditing.written(key, it.value())));
    side(json, key, one.theirs());
  }

  private static void byHand(Json json, ManualEdit one) {
    json.texts("path", one.path())
        .text("place", one.at().toString())
        .text("write", one.write())
        .text("reason", one.why());
  }

  private static String key(List<String> path) {
    return path.get(path.size() - 1);
  }
}
