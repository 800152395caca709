package assize.report.redacted;

import assize.redaction.MaskCounts;
import assize.redaction.TextMasker;
import assize.report.view.AnchorIds;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/** The texts of one page as others may see them, and what is masked in them. */
final class MaskingTextMapper implements ViewTextMapper.Changes {
  private final TextMasker mask;
  private final MaskCounts times;
  private final Map<String, String> names = new HashMap<>();
  private final Map<String, String> keys = new HashMap<>();
  private final Set<String> takenKeys = new HashSet<>();
  private final Set<String> taken = new HashSet<>();

  MaskingTextMapper(TextMasker mask) {
    this.mask = mask;
    this.times = new MaskCounts();
  }

  MaskCounts times() {
    return times;
  }

  @Override
  public String text(String text) {
    return mask.text(text, times);
  }

  /** The page's own names stay; of those made from somebody's name, that name is masked. */
  @Override
  public String name(String name) {
    return names.computeIfAbsent(name, this::masked);
  }

  @Override
  public String key(String key) {
    return keys.computeIfAbsent(key, it -> free(mask.text(it), takenKeys));
  }

  private String masked(String name) {
    String kind = AnchorIds.kind(name);
    if (kind.isEmpty()) {
      taken.add(name);
      return name;
    }
    String written = AnchorIds.written(name.substring(kind.length()));
    String masked = mask.text(written);
    String safe = masked.equals(written) ? name : kind + AnchorIds.safe(masked);
    return free(safe, taken);
  }

  private static String free(String wanted, Set<String> taken) {
    String free = wanted;
    for (int i = 2; !taken.add(free); i++) {
      free = wanted + "." + i;
    }
    return free;
  }
}
