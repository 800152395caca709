package assize.date;

/**
 * A year, a month or a day within a date, as written.
 *
 * @param digits two or four digits, X for those not known
 * @param at where in the date they begin
 * @param before the qualifier of this part alone, or nothing
 * @param after the qualifier of this part and all before it, or nothing
 */
record EdtfPart(DigitPattern digits, int at, String before, String after) {

  boolean uncertain() {
    return has("?") || has("%");
  }

  boolean approximate() {
    return has("~") || has("%");
  }

  private boolean has(String qualifier) {
    return before.equals(qualifier) || after.equals(qualifier);
  }
}
