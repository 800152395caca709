package assize.spreadsheet;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.text.SourceFile;

/**
 * Ends the reading of a file that is no table, or none that is read; never leaves this package,
 * where it becomes a diagnostic.
 */
final class UnreadableTableException extends Exception {
  private static final long serialVersionUID = 1L;

  private final DiagnosticCode code;
  private final String reason;
  private final String hint;

  UnreadableTableException(DiagnosticCode code, String reason, String hint) {
    super(reason, null, false, false);
    this.code = code;
    this.reason = reason;
    this.hint = hint;
  }

  /** Says that a file is no table. */
  static UnreadableTableException notATable(String reason, String hint) {
    return new UnreadableTableException(DiagnosticCode.NOT_A_TABLE, reason, hint);
  }

  /** Says that a workbook can't be read any further. */
  static UnreadableTableException damaged(String what) {
    return notATable(
        "this workbook is damaged: " + what, "open it in the spreadsheet and save it again");
  }

  /** Says that a workbook unpacks to more than is read. */
  static UnreadableTableException tooMuch() {
    return new UnreadableTableException(
        DiagnosticCode.FILE_TOO_LARGE,
        "there is more in this workbook than is read: "
            + WorkbookParts.MOST_KEPT / (1024 * 1024)
            + " MiB of cells, "
            + WorkbookParts.MOST_INFLATED / (1024 * 1024)
            + " MiB in all",
        "copy the sheet alone into a new workbook");
  }

  Diagnostic of(String shown) {
    return Diagnostic.of(code, new SourceFile(shown, "").span(0, 0), reason, hint);
  }
}
