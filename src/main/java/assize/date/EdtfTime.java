package assize.date;

import assize.text.Parsed;

/** Checks the time of day behind a date; only the day matters here, but a slip is still a slip. */
final class EdtfTime {
  private static final int MOST_SHIFT_HOURS = 14;

  private EdtfTime() {}

  /** Reads what follows the T: {@code hh:mm:ss}, then nothing, Z, or a shift of hours from UTC. */
  static Parsed<String> read(String text) {
    if (text.length() < 8 || !shape(text, 0, "dd:dd:dd")) {
      return bad("write the time as in 23:20:30");
    }
    if (number(text, 0) == 24) {
      return bad("a day's last time is 23:59:59; midnight is 00:00:00 of the next day");
    }
    if (number(text, 0) > 23 || number(text, 3) > 59 || number(text, 6) > 60) {
      return bad("there is no such time of day");
    }
    String zone = text.substring(8);
    if (zone.isEmpty() || zone.equals("Z")) {
      return leapSecond(text, 0);
    }
    boolean hours = zone.length() == 3 && shape(zone, 1, "dd");
    boolean minutes = zone.length() == 6 && shape(zone, 1, "dd:dd");
    boolean sign = zone.charAt(0) == '+' || zone.charAt(0) == '-';
    if (!sign || (!hours && !minutes)) {
      return bad("after the time write nothing, Z, or a shift as in +04:30");
    }
    int total = number(zone, 1) * 60 + (minutes ? number(zone, 4) : 0);
    if ((minutes && number(zone, 4) > 59) || total > MOST_SHIFT_HOURS * 60) {
      return bad("a shift from UTC is at most 14:00, with minutes up to 59");
    }
    if (total == 0 && zone.charAt(0) == '-') {
      return bad("write no shift as Z or +00:00");
    }
    return leapSecond(text, zone.charAt(0) == '-' ? -total : total);
  }

  /** A minute has a second 60 only at the end of a day in UTC (ISO 8601-1:2019, from memory). */
  private static Parsed<String> leapSecond(String text, int shift) {
    int day = 24 * 60;
    int minute = Math.floorMod(number(text, 0) * 60 + number(text, 3) - shift, day);
    return number(text, 6) == 60 && minute != day - 1
        ? bad("only the last minute of a day in UTC can have a second 60")
        : Parsed.ok(text);
  }

  private static boolean shape(String text, int at, String shape) {
    for (int i = 0; i < shape.length(); i++) {
      char c = text.charAt(at + i);
      if (shape.charAt(i) == 'd' ? c < '0' || c > '9' : c != shape.charAt(i)) {
        return false;
      }
    }
    return true;
  }

  private static int number(String text, int at) {
    return (text.charAt(at) - '0') * 10 + (text.charAt(at + 1) - '0');
  }

  private static Parsed<String> bad(String reason) {
    return Parsed.bad(reason, 0, 0);
  }
}
