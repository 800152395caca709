package assize.docs;

import static org.assertj.core.api.Assertions.assertThat;

import assize.share.Key;
import assize.share.Mask;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The worked example of the page on copies for others is right. */
class SharingPageTest {
  private static String page() throws IOException {
    return Files.readString(Path.of("docs/sharing.md"));
  }

  private static String found(String pattern) throws IOException {
    Matcher matcher = Pattern.compile(pattern).matcher(page());
    assertThat(matcher.find()).as(pattern).isTrue();
    return matcher.group(1);
  }

  @Test
  void theOpeningWordsGiveTheFingerprint() throws IOException {
    String words = found("opening words  (\\S+)");
    Key key = Key.read(words).toOptional().orElseThrow();
    assertThat(key.fingerprint("L45-4388")).isEqualTo(found("fingerprint    (\\S+)"));
    assertThat(page()).contains("L45-4388 " + words);
    assertThat(Mask.of(List.of("L45-4388"), List.of()).text("L45-4388")).isEqualTo("L45-4xxx");
  }

  @Test
  void theSlipIsToldAsThePageSays() throws IOException {
    String wrong = found("group 3 \\((\\S+)\\) is mistyped");
    String words = found("opening words  (\\S+)");
    String right = words.split("-")[2];
    String reason = Key.read(words.replace(right, wrong)).match(key -> "read", bad -> bad.reason());
    assertThat(page()).contains("error: the opening words: " + reason);
  }
}
