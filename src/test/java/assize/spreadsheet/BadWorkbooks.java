package assize.spreadsheet;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Workbooks as somebody may send them, written by hand from ECMA-376 part 1, 18 (from memory). */
final class BadWorkbooks {
  private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  private static final String RELATED =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  private static final String HEAD =
      row(1, text("A1", "Item"), text("B1", "Aspect"), text("C1", "Found"), text("D1", "Note"));

  private BadWorkbooks() {}

  /** Returns each by its name. */
  static Map<String, byte[]> all() {
    Map<String, byte[]> all = new TreeMap<>();
    String plate = text("A2", "data-plate");
    all.put(
        "formula",
        sheet(HEAD + row(2, plate, text("B2", "count"), "<c r='C2'><f>2+2</f><v>4</v></c>")));
    all.put(
        "fault",
        sheet(HEAD + row(2, plate, text("B2", "count"), "<c r='C2' t='e'><v>#N/A</v></c>")));
    all.put(
        "number",
        sheet(
            HEAD
                + row(2, plate, text("B2", "part number"), "<c r='C2'><v>123</v></c>")
                + row(3, text("A3", "data-plate"), text("B3", "count"), "<c r='C3'><v>4</v></c>")
                + row(
                    4,
                    text("A4", "data-plate"),
                    text("B4", "size"),
                    "<c r='C4' s='1'><v>43894</v></c>")
                + row(
                    5,
                    text("A5", "horn-button"),
                    text("B5", "finish"),
                    "<c r='C5' t='b'><v>1</v></c>")
                + row(
                    6,
                    text("A6", "data-plate"),
                    text("B6", "present"),
                    "<c r='C6' t='b'><v>1</v></c>")
                + row(
                    7,
                    text("A7", "data-plate"),
                    text("B7", "size"),
                    "<c r='C7' s='2'><v>7.8125E-2</v></c>")));
    all.put(
        "merged",
        sheet(
            HEAD
                + row(2, text("A2", "horn-button"), text("B2", "finish"), text("C2", "nickel"))
                + row(3, text("A3", "horn-button"), text("B3", "color")),
            "<mergeCells><mergeCell ref='C2:C3'/></mergeCells>"));
    all.put(
        "unknown-item",
        sheet(HEAD + row(2, text("A2", "horn-buton"), text("B2", "finish"), text("C2", "nickle"))));
    all.put("far-cell", sheet(row(1, text("ZZZZ1", "Item"))));
    all.put("two-in-one-place", sheet(row(1, text("A1", "Item"), text("A1", "Item"))));
    all.put("no-such-text", sheet(row(1, "<c r='A1' t='s'><v>7</v></c>")));
    all.put("no-sheet", workbook("<worksheet/>"));
    all.put("not-xml", workbook("<worksheet><sheetData>"));
    String outside = "<!DOCTYPE w [<!ENTITY x SYSTEM 'file:///etc/hostname'>]>";
    all.put(
        "outside-entity", workbook(outside + "<worksheet><sheetData>&x;</sheetData></worksheet>"));
    all.put("document-type", workbook("<!DOCTYPE w>" + xml(HEAD, "")));
    all.put("deep", workbook("<a>".repeat(100_000)));
    all.put(
        "opendocument",
        zip(
            Map.of(
                "mimetype",
                "application/vnd.oasis.opendocument.spreadsheet",
                "content.xml",
                "<x/>")));
    all.put("binary", zip(Map.of("[Content_Types].xml", "<x/>", "xl/workbook.bin", "x")));
    all.put("only-zip", zip(Map.of("readme.txt", "x")));
    all.put("text", "Item,Aspect,Found\r\n".getBytes(StandardCharsets.UTF_8));
    all.put("old-office", old("Workbook"));
    all.put("locked", old("EncryptedPackage"));
    byte[] good = sheet(HEAD);
    all.put("cut-off", Arrays.copyOf(good, good.length / 2));
    byte[] flipped = good.clone();
    flipped[52] ^= 0x55;
    all.put("changed-byte", flipped);
    return all;
  }

  private static byte[] old(String name) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(new byte[] {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0});
    out.writeBytes(new byte[] {(byte) 0xA1, (byte) 0xB1, 0x1A, (byte) 0xE1});
    out.writeBytes(new byte[504]);
    out.writeBytes(name.getBytes(StandardCharsets.UTF_16LE));
    return out.toByteArray();
  }

  static String text(String cell, String text) {
    return "<c r='" + cell + "' t='inlineStr'><is><t>" + text + "</t></is></c>";
  }

  static String row(int number, String... cells) {
    return "<row r='" + number + "'>" + String.join("", cells) + "</row>";
  }

  static byte[] sheet(String rows) {
    return sheet(rows, "");
  }

  private static byte[] sheet(String rows, String behind) {
    return workbook(xml(rows, behind));
  }

  private static String xml(String rows, String behind) {
    return "<worksheet xmlns='"
        + MAIN
        + "'><sheetData>"
        + rows
        + "</sheetData>"
        + behind
        + "</worksheet>";
  }

  /** Returns a workbook of one sheet, given its part. */
  static byte[] workbook(String sheet) {
    return workbook(sheet, "<sst/>");
  }

  static byte[] workbook(String sheet, String texts) {
    Map<String, String> parts = new LinkedHashMap<>();
    parts.put("[Content_Types].xml", "<Types/>");
    parts.put("_rels/.rels", related("officeDocument", "xl/workbook.xml"));
    parts.put(
        "xl/workbook.xml",
        "<workbook xmlns='"
            + MAIN
            + "' xmlns:r='"
            + RELATED
            + "'><sheets>"
            + "<sheet name='Inspection' sheetId='1' r:id='worksheet'/></sheets></workbook>");
    parts.put(
        "xl/_rels/workbook.xml.rels",
        related("worksheet", "worksheets/sheet1.xml", "sharedStrings", "t.xml", "styles", "s.xml"));
    parts.put(
        "xl/s.xml",
        "<styleSheet><numFmts><numFmt numFmtId='200' formatCode='&quot;in &quot;0.000'/></numFmts>"
            + "<cellStyleXfs><xf numFmtId='14'/></cellStyleXfs><cellXfs><xf numFmtId='0'/>"
            + "<xf numFmtId='16'/><xf numFmtId='200'/></cellXfs></styleSheet>");
    parts.put("xl/t.xml", texts);
    parts.put("xl/worksheets/sheet1.xml", sheet);
    return zip(parts);
  }

  private static String related(String... kindsAndTargets) {
    StringBuilder out = new StringBuilder("<Relationships>");
    for (int i = 0; i < kindsAndTargets.length; i += 2) {
      out.append("<Relationship Id='" + kindsAndTargets[i] + "' Type='" + RELATED + "/")
          .append(kindsAndTargets[i] + "' Target='" + kindsAndTargets[i + 1] + "'/>");
    }
    return out.append("</Relationships>").toString();
  }

  static byte[] zip(Map<String, String> parts) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      for (Map.Entry<String, String> part : new TreeMap<>(parts).entrySet()) {
        zip.putNextEntry(new ZipEntry(part.getKey()));
        zip.write(part.getValue().getBytes(StandardCharsets.UTF_8));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }
}
