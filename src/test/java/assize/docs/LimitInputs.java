package assize.docs;

import assize.cli.Main;
import assize.cli.Terminal;
import assize.image.Photo;
import assize.redaction.OwnerSecret;
import assize.text.Parsed;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.LongFunction;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;

/** Gives the program as much of something as is asked for. */
@FunctionalInterface
interface LimitInputs {
  /** Returns what the program says of {@code n} of it. */
  String said(Path folder, long n) throws Exception;

  /** By the first cell of the page's row. */
  Map<String, LimitInputs> ALL = all();

  String RULES =
      """
      rule_set: small
      name: A small standard
      edition: "1"
      scale: {method: sum, out_of: 10}
      models: {X1: {name: Dropside, production: 1932-03/1936-08}}
      """;
  String ITEM =
      "areas: {cab: {name: Cab, items: {horn-button: {title: Horn button, points: 4, expect: ";
  String END = "}}}}\n";
  String FINISHES = "finishes: {nickel: {name: nickel plate}}\n";
  String CHIP = "colors: {green: {name: Green, lab: [30, -20, 10]}}\n";
  String RECORD = "record: one\nrules: rules.yaml\nvehicle: {name: The first, model: X1}\n";

  private static Map<String, LimitInputs> all() {
    Map<String, LimitInputs> all = new LinkedHashMap<>();
    all.put(
        "bytes of a rule set's or record's file",
        record(n -> RECORD + "#".repeat((int) n - RECORD.length() - 1) + "\n"));
    all.put("files of a rule set in a folder, beside `rules.yaml`", LimitInputs::manyFiles);
    all.put(
        "names inside each other",
        record(n -> RECORD + "x: " + "{a: ".repeat((int) n - 1) + "1" + "}".repeat((int) n - 1)));
    all.put("entries of a file", record(n -> RECORD + "x: [" + "a,".repeat((int) n - 7) + "]"));
    all.put(
        "characters of a text",
        record(n -> RECORD + "observations: {horn-button: {note: " + "a".repeat((int) n) + "}}"));
    all.put("characters of a name", record(n -> RECORD + "a".repeat((int) n) + ": 1"));
    all.put(
        "things wrong in a file that are shown",
        record(n -> RECORD + join(n, i -> "k" + i + ": 1\n", "")));
    all.put("points", rules(n -> ITEM.replace("points: 4", "points: " + n) + "{finish: nickel}"));
    all.put(
        "values that claims name for one aspect of one item",
        claims(n -> "[{says: {finish: [" + join(n, i -> "f" + i, ", ") + "]}}]"));
    all.put(
        "different things that claims hold of one aspect",
        claims(
            n ->
                "["
                    + join(
                        n, i -> "{says: {finish: [f" + i / 8 + ", f" + (10 + i % 8) + "]}}", ", ")
                    + "]"));
    all.put(
        "claims of one aspect that leave open or rule out",
        claims(n -> "[" + join(n, i -> "{rules_out: {finish: f" + i + "}}", ", ") + "]"));
    all.put(
        "traces on one item",
        record(
            n ->
                RECORD
                    + "traces: ["
                    + join(n, i -> "{item: horn-button, grade: A, says: {finish: nickel}}", ", ")
                    + "]"));
    all.put(
        "covered parts of a photo",
        record(
            n ->
                RECORD
                    + "evidence: {front: {photo: x.png, black_out: ["
                    + join(n, i -> "{left: 1, top: 1, width: 1, height: 1}", ", ")
                    + "]}}"));
    all.put(
        "pieces counted",
        both(ITEM + "{count: 2}", n -> RECORD + "observations: {horn-button: {count: " + n + "}}"));
    all.put(
        "color difference allowed",
        rules(n -> ITEM + "{color: {any: green, tolerance: " + n + "}}"));
    all.put(
        "uncertainty of a color",
        both(
            ITEM + "{color: green}",
            n ->
                RECORD
                    + "observations: {horn-button: {color: {lab: [1, 2, 3], uncertainty: "
                    + n
                    + "}}}"));
    all.put("characters of a date", (folder, n) -> run("date", date(n)));
    all.put("years, before and after year 0", (folder, n) -> run("date", "Y" + n, "Y-" + n));
    all.put(
        "spans of days that a condition covers",
        rules(
            n ->
                ITEM.replace(
                        "points: 4",
                        "points: 4, built: \"{" + join(n, i -> "" + (1700 + 2 * i), ",") + "}\"")
                    + "{finish: nickel}"));
    all.put("digits of a size", rules(n -> ITEM + "{size: " + "1".repeat((int) n) + " mm}"));
    all.put(
        "digits in a window of date codes",
        rules(
            n ->
                ITEM
                    + "{date_code: {pattern: \"(?P<year>[0-9]{2})\", lead_time: P"
                    + "1".repeat((int) n)
                    + "D..P0D}}"));
    all.put(
        "characters of a pattern",
        rules(n -> ITEM + "{part_number: \"" + "1".repeat((int) n) + "\"}"));
    all.put(
        "signs of a pattern, with all that it repeats written out",
        rules(n -> ITEM + "{part_number: \"A{1000}B{500}C{" + (n - 1500) + "}\"}"));
    all.put(
        "characters of a path",
        record(n -> document(("x".repeat(99) + "/").repeat(9) + "x".repeat((int) n - 900))));
    all.put("characters of a file's name", record(n -> document("x".repeat((int) n))));
    all.put("files merged at once", LimitInputs::friends);
    all.put("items that changes bear on, each counted for each change", LimitInputs::changed);
    all.put("bytes of a photo", (folder, n) -> photo(new byte[(int) n]));
    all.put("pixels of a photo", (folder, n) -> photo(png(10_000, (n + 9_999) / 10_000)));
    all.put("pixels of a photo's longer side", (folder, n) -> photo(png(n, 1)));
    all.put("pixels of a progressive JPEG", (folder, n) -> photo(progressive(n)));
    all.put("pixels of a progressive JPEG, times its scans", (folder, n) -> photo(scans(n)));
    all.put("segments of a JPEG", (folder, n) -> photo(segments((int) n)));
    all.put("chunks of a PNG", (folder, n) -> photo(chunks((int) n)));
    all.put("pixels of a WebP photo", (folder, n) -> photo(webp(n)));
    all.put("bytes of a filled-in CSV", LimitInputs::csv);
    all.put("bytes of a filled-in workbook", LimitInputs::workbook);
    all.put("cells of a filled-in workbook", LimitInputs::cells);
    all.put("bytes of a page that `verify` checks", LimitInputs::page);
    all.put("bytes of a record's secret", LimitInputs::secret);
    all.putAll(CrowdedRules.all());
    return all;
  }

  static String join(long n, LongFunction<String> one, String between) {
    return LongStream.range(0, n).mapToObj(one).collect(Collectors.joining(between));
  }

  private static String document(String path) {
    return RECORD + "evidence: {paper: {document: \"" + path + "\"}}";
  }

  static String run(String... words) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PrintStream said = new PrintStream(bytes, true, StandardCharsets.UTF_8);
    Main.run(new Terminal(said, said, false), words);
    return bytes.toString(StandardCharsets.UTF_8);
  }

  private static void lay(Path folder, String rules, String record) throws IOException {
    Files.writeString(folder.resolve("rules.yaml"), RULES + FINISHES + CHIP + rules);
    Files.writeString(folder.resolve("one.yaml"), record);
  }

  private static LimitInputs both(String item, LongFunction<String> record) {
    return (folder, n) -> {
      lay(folder, item + END, record.apply(n));
      return run("check", folder.resolve("one.yaml").toString());
    };
  }

  private static LimitInputs record(LongFunction<String> record) {
    return both(ITEM + "{finish: nickel}", record);
  }

  private static LimitInputs rules(LongFunction<String> rules) {
    return (folder, n) -> {
      lay(folder, rules.apply(n) + END, RECORD);
      return run("check", folder.resolve("rules.yaml").toString());
    };
  }

  /** Claims of different sources over 60 finishes. */
  private static LimitInputs claims(LongFunction<String> claims) {
    return (folder, n) -> {
      String each = claims.apply(n);
      StringBuilder cited = new StringBuilder();
      int sources = 0;
      for (int at = 0; at < each.length(); at++) {
        boolean begins = each.startsWith("{says", at) || each.startsWith("{rules_out", at);
        cited.append(each.charAt(at)).append(begins ? "source: s" + sources++ + ", " : "");
      }
      String rules =
          RULES
              + "finishes: {"
              + join(60, i -> "f" + i + ": {name: Finish " + i + "}", ", ")
              + "}\nsources: {"
              + join(sources, i -> "s" + i + ": {kind: drawing, grade: A, title: S" + i + "}", ", ")
              + "}\n"
              + ITEM.replace("expect: ", "claims: ")
              + cited
              + END;
      Files.writeString(folder.resolve("rules.yaml"), rules);
      return run("check", folder.resolve("rules.yaml").toString());
    };
  }

  private static String friends(Path folder, long n) throws IOException {
    lay(folder, ITEM + "{finish: nickel}" + END, RECORD);
    List<String> words = new ArrayList<>(List.of("merge", folder.resolve("one.yaml").toString()));
    for (int i = 0; i < n; i++) {
      words.add(Files.writeString(folder.resolve("friend-" + i + ".yaml"), RECORD).toString());
    }
    return run(words.toArray(String[]::new));
  }

  /** Four hundred models that changed, each of which bears on all items, and items that changed. */
  private static String changed(Path folder, long n) throws IOException {
    long items = n / 100;
    Files.writeString(folder.resolve("older.yaml"), edition(items, 0, "1936"));
    Files.writeString(folder.resolve("newer.yaml"), edition(items, n % 100, "1937"));
    return run(
        "compare",
        folder.resolve("older.yaml").toString(),
        folder.resolve("newer.yaml").toString(),
        "--out",
        folder.resolve("changes.html").toString());
  }

  private static String edition(long items, long others, String last) {
    return RULES.substring(0, RULES.indexOf("models"))
        + "models: {"
        + join(100, i -> "M" + i + ": {name: M" + i + ", production: 1932/" + last + "}", ", ")
        + "}\nareas: {cab: {name: Cab, items: {"
        + join(
            items,
            i ->
                "i"
                    + i
                    + ": {title: I"
                    + i
                    + ", points: "
                    + (i < others ? 2 : 1)
                    + ", expect: {present: yes}}",
            ", ")
        + "}}}\n";
  }

  private static String manyFiles(Path folder, long n) throws IOException {
    lay(folder, ITEM + "{finish: nickel}" + END, RECORD);
    Files.delete(folder.resolve("one.yaml"));
    for (int i = 0; i < n; i++) {
      Files.writeString(folder.resolve("more-" + i + ".yaml"), "# nothing yet\n");
    }
    return run("check", folder.toString());
  }

  /** A set of years, with as many signs of doubt as are wanted. */
  private static String date(long n) {
    String years = "[" + "1934,".repeat(198) + "1934]";
    int doubts = (int) n - years.length();
    return years.replaceFirst("(1934,){" + doubts + "}", "1934~,".repeat(doubts));
  }

  private static String photo(byte[] file) {
    return Photo.open(file).match(it -> "read", Parsed.Bad::reason);
  }

  private static byte[] picture(String format, boolean progressive) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageWriter writer = ImageIO.getImageWritersByFormatName(format).next();
    ImageWriteParam how = writer.getDefaultWriteParam();
    if (progressive) {
      how.setProgressiveMode(ImageWriteParam.MODE_DEFAULT);
    }
    try (var stream = ImageIO.createImageOutputStream(out)) {
      writer.setOutput(stream);
      BufferedImage image = new BufferedImage(8, 8, BufferedImage.TYPE_INT_RGB);
      writer.write(null, new IIOImage(image, null, null), how);
    }
    return out.toByteArray();
  }

  private static byte[] png(long width, long height) throws IOException {
    byte[] png = picture("png", false);
    ByteBuffer header = ByteBuffer.wrap(png).putInt(16, (int) width).putInt(20, (int) height);
    CRC32 crc = new CRC32();
    crc.update(png, 12, 17);
    header.putInt(29, (int) crc.getValue());
    return png;
  }

  /** One pixel too many is one row too many. */
  private static byte[] progressive(long pixels) throws IOException {
    byte[] jpeg = picture("jpeg", true);
    int frame = marker(jpeg, 0xc2);
    ByteBuffer.wrap(jpeg)
        .putShort(frame + 5, (short) ((pixels + 9_999) / 10_000))
        .putShort(frame + 7, (short) 10_000);
    return jpeg;
  }

  private static int marker(byte[] jpeg, int marker) {
    int at = 0;
    while (jpeg[at] != (byte) 0xff || jpeg[at + 1] != (byte) marker) {
      at++;
    }
    return at;
  }

  /** Twenty scans of so many rows that all of them have as many pixels as are wanted. */
  private static byte[] scans(long pixels) throws IOException {
    byte[] jpeg = progressive((pixels + 19) / 20);
    int scan = marker(jpeg, 0xda);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(jpeg, 0, scan);
    for (int i = 0; i < 20; i++) {
      out.write(jpeg, scan, 14);
    }
    out.write(new byte[] {(byte) 0xff, (byte) 0xd9});
    return out.toByteArray();
  }

  /** Empty comments make up for what an ordinary picture has not. */
  private static byte[] segments(int n) throws IOException {
    byte[] jpeg = picture("jpeg", false);
    int there = 0;
    for (int at = 2; jpeg[at + 1] != (byte) 0xda; there++) {
      at += 2 + ((jpeg[at + 2] & 0xff) << 8 | jpeg[at + 3] & 0xff);
    }
    byte[] comment = {(byte) 0xff, (byte) 0xfe, 0, 2};
    return filled(jpeg, 2, comment, n - there - 1);
  }

  /** Empty texts make up for what a small picture has not. */
  private static byte[] chunks(int n) throws IOException {
    byte[] png = picture("png", false);
    ByteBuffer text = ByteBuffer.allocate(12).putInt(0);
    text.put("tEXt".getBytes(StandardCharsets.US_ASCII));
    CRC32 crc = new CRC32();
    crc.update(text.array(), 4, 4);
    text.putInt((int) crc.getValue());
    return filled(png, 33, text.array(), n - 3);
  }

  private static byte[] filled(byte[] file, int at, byte[] piece, int times) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(file, 0, at);
    for (int i = 0; i < times; i++) {
      out.writeBytes(piece);
    }
    out.write(file, at, file.length - at);
    return out.toByteArray();
  }

  /** The head of a picture, by the format's specification (RFC 6386, 9.1; RFC 9649). */
  private static byte[] webp(long pixels) {
    ByteBuffer webp = ByteBuffer.allocate(40).order(ByteOrder.LITTLE_ENDIAN);
    webp.put("RIFF".getBytes(StandardCharsets.US_ASCII)).putInt(32);
    webp.put("WEBPVP8 ".getBytes(StandardCharsets.US_ASCII)).putInt(20);
    webp.put(new byte[] {0x10, 0, 0, (byte) 0x9d, 1, 0x2a});
    webp.putShort((short) 4000).putShort((short) ((pixels + 3_999) / 4000));
    return webp.array();
  }

  private static Path sheet(Path folder, String name) throws IOException {
    lay(folder, ITEM + "{finish: nickel}" + END, RECORD);
    Path table = folder.resolve(name);
    run("sheet", folder.resolve("one.yaml").toString(), "--out", table.toString());
    return table;
  }

  private static String merged(Path folder, Path table) {
    return run("merge", folder.resolve("one.yaml").toString(), table.toString());
  }

  private static String csv(Path folder, long n) throws IOException {
    Path table = sheet(folder, "sheet.csv");
    String text = Files.readString(table);
    long more = n - Files.size(table);
    Files.writeString(table, text + "\r\n".repeat((int) more / 2) + "\n".repeat((int) more % 2));
    return merged(folder, table);
  }

  private static byte[] packed(Map<String, byte[]> parts, long padding) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      for (Map.Entry<String, byte[]> one : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(one.getKey()));
        zip.write(one.getValue());
        zip.closeEntry();
      }
      byte[] picture = new byte[(int) padding];
      CRC32 crc = new CRC32();
      crc.update(picture);
      ZipEntry entry = new ZipEntry("xl/media/picture.png");
      entry.setMethod(ZipEntry.STORED);
      entry.setSize(padding);
      entry.setCrc(crc.getValue());
      zip.putNextEntry(entry);
      zip.write(picture);
      zip.closeEntry();
    }
    return out.toByteArray();
  }

  private static Map<String, byte[]> parts(Path table) throws IOException {
    Map<String, byte[]> parts = new LinkedHashMap<>();
    try (ZipInputStream zip =
        new ZipInputStream(new ByteArrayInputStream(Files.readAllBytes(table)))) {
      for (ZipEntry one = zip.getNextEntry(); one != null; one = zip.getNextEntry()) {
        parts.put(one.getName(), zip.readAllBytes());
      }
    }
    return parts;
  }

  private static String workbook(Path folder, long n) throws IOException {
    Path table = sheet(folder, "sheet.xlsx");
    Map<String, byte[]> parts = parts(table);
    long base = packed(parts, 0).length;
    Files.write(table, packed(parts, n - base));
    return merged(folder, table);
  }

  private static String cells(Path folder, long n) throws IOException {
    Path table = sheet(folder, "sheet.xlsx");
    Map<String, byte[]> parts = parts(table);
    String name =
        parts.keySet().stream().filter(it -> it.endsWith("sheet1.xml")).findFirst().orElseThrow();
    String xml = new String(parts.get(name), StandardCharsets.UTF_8);
    long there =
        parts.entrySet().stream()
            .filter(it -> it.getKey().startsWith("xl/worksheets/"))
            .mapToLong(
                it ->
                    new String(it.getValue(), StandardCharsets.UTF_8).split("<c ", -1).length - 1L)
            .sum();
    String row = "<row>" + "<c/>".repeat((int) (n - there)) + "</row></sheetData>";
    parts.put(name, xml.replace("</sheetData>", row).getBytes(StandardCharsets.UTF_8));
    Files.write(table, packed(parts, 0));
    return merged(folder, table);
  }

  /** A page that is all zeros, which most disks do not keep. */
  private static String page(Path folder, long n) throws IOException {
    Path page = folder.resolve("page.html");
    try (RandomAccessFile file = new RandomAccessFile(page.toFile(), "rw")) {
      file.setLength(n);
    }
    String words = OwnerSecret.random("one", LocalDate.EPOCH).key("one", "chassis").proofCode();
    return run("verify", page.toString(), "L45-4388", words);
  }

  private static String secret(Path folder, long n) throws IOException {
    lay(folder, ITEM + "{finish: nickel}" + END, RECORD);
    Files.writeString(folder.resolve("one.secret"), "a".repeat((int) n));
    Path out = folder.resolve("out");
    return run("judge", "--redact", folder.resolve("one.yaml").toString(), "--out", out.toString());
  }
}
