package assize.redaction;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class ProofKeyTest {
  private static final String ALPHABET = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

  static List<String> published() throws IOException {
    return Files.readAllLines(Path.of("src/test/resources/assize/redaction/hmac.csv")).stream()
        .filter(line -> !line.startsWith("#"))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("published")
  void agreesWithThePublishedCases(String line) {
    String[] cells = line.split(",");
    byte[] mac = Hmac.of(HexFormat.of().parseHex(cells[0]), HexFormat.of().parseHex(cells[1]));
    assertThat(HexFormat.of().formatHex(mac)).isEqualTo(cells[2]);
  }

  private static ProofKey key(long seed) {
    byte[] bytes = new byte[32];
    new Random(seed).nextBytes(bytes);
    return new ProofKey(bytes);
  }

  private static String reason(String words) {
    return ProofKey.read(words).match(key -> "read", bad -> bad.reason());
  }

  @Test
  void isReadAsItIsToldOrWrittenDown() {
    for (long seed = 0; seed < 200; seed++) {
      ProofKey key = key(seed);
      String words = key.proofCode();
      assertThat(words).matches("([0-9A-HJKMNP-TV-Z]{5}-){12}[0-9A-HJKMNP-TV-Z]{5}");
      String small = words.toLowerCase(Locale.ROOT);
      for (String told :
          List.of(
              words,
              small.replace('-', ' '),
              words.replace("-", ""),
              words.replace("-", " – "),
              small.replace('0', 'o').replace('1', 'l'),
              words.replace('1', 'I') + "\n")) {
        assertThat(ProofKey.read(told).toOptional()).as(told).contains(key);
      }
    }
  }

  @Test
  void noticesEveryWrongLetterAndSaysInWhichGroup() {
    String words = key(7).proofCode();
    for (int at = 0; at < words.length(); at++) {
      if (words.charAt(at) == '-') {
        continue;
      }
      for (char other : ALPHABET.toCharArray()) {
        if (other != words.charAt(at)) {
          String wrong = words.substring(0, at) + other + words.substring(at + 1);
          assertThat(reason(wrong)).contains("group " + (at / 6 + 1) + " (").contains("mistyped");
        }
      }
    }
  }

  @Test
  void noticesLettersAndGroupsThatChangedPlaces() {
    for (long seed = 0; seed < 50; seed++) {
      String words = key(seed).proofCode();
      for (int at = 0; at + 1 < words.length(); at++) {
        char a = words.charAt(at);
        char b = words.charAt(at + 1);
        if (a != b && a != '-' && b != '-') {
          assertThat(reason(words.substring(0, at) + b + a + words.substring(at + 2)))
              .contains("mistyped");
        }
      }
      List<String> groups = List.of(words.split("-"));
      for (int i = 0; i < groups.size() - 1; i++) {
        List<String> swapped = new java.util.ArrayList<>(groups);
        java.util.Collections.swap(swapped, i, i + 1);
        if (!swapped.equals(groups)) {
          assertThat(reason(String.join("-", swapped))).contains("stand in each other's place");
        }
      }
    }
  }

  @Test
  void saysWhatIsMissing() {
    String words = key(3).proofCode();
    assertThat(reason("")).contains("13 groups of 5").contains("this has 0 letters");
    assertThat(reason(words.substring(0, 10) + words.substring(11))).contains("group 2, ");
    assertThat(reason(words.substring(6))).contains("this has 60 letters and digits");
    assertThat(reason(words.substring(1) + "U")).contains("no \"U\" in it");
    assertThat(reason(words + "!")).contains("no \"!\" in it");
  }

  @Test
  void noKeySaysMoreThan32Bytes() {
    String words = key(3).proofCode();
    String start = words.substring(0, words.length() - 5);
    int read = 0;
    for (char last : ALPHABET.toCharArray()) {
      for (char check : ALPHABET.toCharArray()) {
        String end = words.substring(words.length() - 5, words.length() - 2) + last + check;
        read += ProofKey.read(start + end).toOptional().isPresent() ? 1 : 0;
      }
    }
    // 52 letters of five bits hold 260 bits; the last letter of 256 says one bit more
    assertThat(read).isEqualTo(2);
  }

  @ParameterizedTest
  @ValueSource(strings = {"L45 4388", "l45-4388", "L45/4388", "Ｌ４５４３８８", "L454388"})
  void givesOneHashHoweverANumberIsSpaced(String number) {
    assertThat(key(1).hash(number)).isEqualTo(key(1).hash("L45-4388"));
  }

  private static final LocalDate DAY = LocalDate.of(2026, 7, 14);

  @Test
  void givesAnotherHashForEachNumberRecordAndTable() {
    OwnerSecret secret = OwnerSecret.random("our-x1", DAY);
    ProofKey key = secret.key("our-x1", "chassis");
    assertThat(key.hash("L45-4388")).isNotEqualTo(key.hash("L45-4389"));
    assertThat(secret.key("our-x1", "chassis")).isEqualTo(key);
    assertThat(secret.key("our-x1", "engine")).isNotEqualTo(key);
    assertThat(OwnerSecret.random("our-x1", DAY).key("our-x1", "chassis")).isNotEqualTo(key);
  }

  @Test
  void keepsItsKeysWhenTheRecordIsNamedOtherwise() {
    OwnerSecret secret = OwnerSecret.random("our-x1", DAY);
    ProofKey key = secret.key("our-x1", "chassis");
    OwnerSecret read = OwnerSecret.read(secret.file("renamed.yaml")).toOptional().orElseThrow();
    assertThat(read.record()).contains("our-x1");
    assertThat(read.made()).contains(DAY);
    assertThat(read.key("our-x2", "chassis")).isEqualTo(key);
    String other = secret.file("our-x1.yaml").replace("record: our-x1", "record: our-x2");
    assertThat(OwnerSecret.read(other).toOptional().orElseThrow().key("our-x1", "chassis"))
        .isNotEqualTo(key);
  }

  @Test
  void aSecretOfTheFirstVersionGivesTheKeysThatItGave() throws Exception {
    byte[] bytes = new byte[32];
    for (int i = 0; i < bytes.length; i++) {
      bytes[i] = (byte) i;
    }
    String file = "# It belongs to our-x1.yaml.\nsecret: " + ProofCode.of(bytes) + "\n";
    OwnerSecret secret = OwnerSecret.read(file).toOptional().orElseThrow();
    assertThat(secret.record()).isEmpty();
    assertThat(secret.made()).isEmpty();
    // worked out by the platform's own HMAC, as the first version did
    Mac mac = Mac.getInstance("HmacSHA256");
    mac.init(new SecretKeySpec(bytes, "HmacSHA256"));
    byte[] key = mac.doFinal("number key\nour-x1\nchassis".getBytes(StandardCharsets.UTF_8));
    assertThat(secret.key("our-x1", "chassis")).isEqualTo(new ProofKey(key));
    mac.init(new SecretKeySpec(key, "HmacSHA256"));
    assertThat(secret.key("our-x1", "chassis").hash("L45-4388"))
        .isEqualTo(
            HexFormat.of().formatHex(mac.doFinal("L454388".getBytes(StandardCharsets.UTF_8))));
  }

  @Test
  void aMarkTellsSecretsApartAndIsNoPartOfThem() {
    OwnerSecret secret = OwnerSecret.random("our-x1", DAY);
    String mark = secret.mark();
    String file = secret.file("our-x1.yaml");
    assertThat(mark).matches("[0-9A-HJKMNP-TV-Z]{5}");
    assertThat(OwnerSecret.read(file).toOptional().orElseThrow().mark()).isEqualTo(mark);
    assertThat(file.replaceAll("(?s).*secret: ", "")).doesNotStartWith(mark);
    long marks =
        Stream.generate(() -> OwnerSecret.random("our-x1", DAY).mark())
            .limit(20)
            .distinct()
            .count();
    // of 2^20 marks two of twenty are the same in one run of some 5000, three in none
    assertThat(marks).isGreaterThan(18);
  }

  @Test
  void aSecretIsReadFromItsFile() {
    OwnerSecret secret = OwnerSecret.random("our-x1", DAY);
    String file = secret.file("our-x1.yaml");
    assertThat(file).startsWith("# Keep this file").contains("our-x1.yaml").endsWith("\n");
    assertThat(OwnerSecret.read(file).toOptional()).contains(secret);
    assertThat(OwnerSecret.read(file.replace("\n", "\r\n")).toOptional()).contains(secret);
    assertThat(OwnerSecret.read(file + file).toOptional()).isEmpty();
    assertThat(OwnerSecret.read(file.substring(0, file.length() - 3)).toOptional()).isEmpty();
    assertThat(refusal("")).isEqualTo("it is empty");
    assertThat(refusal("# It.\n")).contains("no line that begins with `secret:`");
    assertThat(refusal(file.replace("made: 2026-07-14", "made: 14 July")))
        .contains("behind `made:` it needs a day");
    assertThat(refusal(file + "made: 2026-07-15\n")).contains("more than one line");
    assertThat(refusal(file.replace("record: our-x1", "record: our x1\u001b")))
        .contains("behind `record:` it needs one record's short name");
    assertThat(refusal(file + "record: our-x2\n")).contains("one record's short name");
  }

  private static String refusal(String file) {
    return OwnerSecret.read(file).match(secret -> "read", bad -> bad.reason());
  }
}
