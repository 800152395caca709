package assize.demo;

/** Close views: plates, stampings, a stripe, a button, a trace of paint. */
final class DetailPictures {
  private static final int GREEN = 0x3A5E4A;
  private static final int BLACK = 0x2B2B2C;
  private static final int RUST = 0x8A5A3A;
  private static final int WOOD = 0xB99A6E;

  private DetailPictures() {}

  /** The hinge strap lifted from its board: black in its shadow, green all round it. */
  static Canvas bedTrace() {
    Canvas s = new Canvas();
    Outline board = Outline.path("M44,150 L676,120 L676,396 L44,416 Z");
    s.fill(board, GREEN);
    s.inside(
        board,
        () -> {
          s.fill(board, Shading.patches(60, 26, 0.60, 0x446B55));
          s.fill(board, Shading.patches(70, 7, 0.74, 0x7F8263));
          s.fill(board, Shading.patches(30, 5, 0.79, WOOD));
          for (int i = 0; i < 3; i++) {
            double y = 205 + 70 * i;
            s.stroke(Outline.line(44, y + 8, 676, y - 12), 3.4, 0x1F3128);
            s.stroke(Outline.line(44, y + 11.5, 676, y - 8.5), 1, 0x7E9A86);
          }
          Outline shadow =
              Outline.path("M170,292 L520,274 Q552,274 552,300 Q552,324 524,326 L170,344 Z");
          s.fill(shadow, BLACK);
          s.fill(shadow, Shading.patches(40, 9, 0.64, 0x3A3A3A));
          s.inside(shadow, () -> s.fill(board, Shading.patches(16, 4, 0.80, WOOD)));
          s.stroke(shadow.move(0, -1), 2.4, 0x2A4436);
          s.stroke(shadow.move(0.6, 1), 1, 0x8AA893);
          for (int i = 0; i < 3; i++) {
            double x = 250 + 118 * i;
            double y = 313 - 6 * i;
            s.fill(Outline.circle(x, y, 10), 0x0F0F0F);
            s.stroke(Outline.arc(x, y, 10, 10, 20, 160), 1.5, WOOD);
          }
        });
    s.pen(board, 2);
    // The strap stands open on its knuckle, its underside toward us.
    Outline shade = Outline.path("M150,300 L172,292 L300,132 L420,94 L440,130 L320,196 L176,330 Z");
    s.inside(board, () -> s.fill(shade, Shading.veil(0x000000, 60)));
    Outline strap =
        Outline.path("M128,296 L252,84 Q262,66 284,70 L300,78 Q318,88 308,108 L188,326 Z");
    s.fill(strap, 0x39383A);
    s.inside(
        strap,
        () -> {
          s.fill(strap, Shading.patches(22, 0.64, RUST));
          s.fill(strap, Shading.patches(11, 0.75, 0x6F4630));
        });
    s.pen(strap, 2);
    s.part(
        Outline.path("M188,326 L308,108 Q318,88 300,78 L308,77 Q330,88 318,110 L198,328 Z"), GREEN);
    for (int i = 0; i < 3; i++) {
      double x = 190 + 37 * i;
      double y = 258 - 64 * i;
      s.part(Outline.ellipse(x, y, 9, 11).turn(30, x, y), 0x17181A);
    }
    Outline knuckle = Outline.soft(96, 288, 112, 46, 20);
    s.part(knuckle, Shading.blend(0, 288, 0x5A8069, 0, 334, 0x22362B));
    s.pen(Outline.line(130, 290, 130, 332), 1.2).pen(Outline.line(172, 290, 172, 332), 1.2);
    for (int i = 0; i < 3; i++) {
      bolt(s, 380 + 62 * i, 60 + 4 * (i % 2), i * 25);
    }
    s.remark("ITS BOLTS", 580, 62, 576, 66, 524, 64);
    s.remark("UNDERSIDE", 46, 90, 134, 97, 226, 150);
    s.remark("BLACK IN ITS SHADOW", 340, 426, 390, 422, 420, 306);
    s.remark("GREEN ALL ROUND", 548, 426, 600, 422, 618, 350);
    return s;
  }

  private static void bolt(Canvas s, double x, double y, double turn) {
    Outline thread = Outline.box(x - 4, y, 8, 36).turn(turn - 20, x, y);
    s.part(thread, Shading.hatch(4, 1.5, 0.4, 0x5A4A3A));
    s.part(Outline.circle(x, y, 12), Shading.round(x - 4, y - 4, 16, 0x6E8F7B, 0x2B4437));
  }

  /** The middle of a steering wheel with its button, yellowish where no thumb reached. */
  static Canvas hornButton() {
    Canvas s = new Canvas();
    Outline rim = Outline.circle(360, 236, 318);
    s.fill(rim.and(Outline.circle(360, 236, 280).scale(-1, 1, 360, 0)), 0x43372C);
    s.stroke(Outline.circle(360, 236, 308), 5, 0x6B5947);
    s.stroke(Outline.circle(360, 236, 286), 3, 0x2E261E);
    s.pen(rim, 1.6).pen(Outline.circle(360, 236, 280), 1.6);
    for (double turn : new double[] {-90, 30, 150}) {
      Outline spoke = Outline.path("M630,220 L630,252 L470,266 L470,206 Z").turn(turn, 360, 236);
      s.part(spoke, Shading.blend(200, 0, 0x52504C, 520, 0, 0x2A2A2B));
      s.stroke(Outline.line(480, 224, 626, 230).turn(turn, 360, 236), 2, 0x8A867E);
    }
    s.part(Outline.circle(360, 236, 134), Shading.round(322, 190, 180, 0x62605C, 0x232324));
    s.pen(Outline.circle(360, 236, 116), 1.2);
    Outline bezel = Outline.circle(360, 236, 96);
    s.part(bezel, Shading.blend(290, 156, 0xF3EFE4, 430, 316, 0x8F8A7C));
    s.inside(
        bezel,
        () -> {
          Outline unreached = Outline.path("M250,250 Q360,330 470,250 L470,340 L250,340 Z");
          s.fill(unreached, Shading.veil(0xB89A4E, 120));
          s.fill(unreached, Shading.patches(18, 0.56, 0xA98F52));
          s.fill(bezel, Shading.patches(7, 0.82, 0x8C7A50));
        });
    s.pen(bezel, 1.6);
    s.part(Outline.circle(360, 236, 72), Shading.round(332, 204, 100, 0x4B4844, 0x151516));
    s.stroke(Outline.arc(360, 236, 61, 61, 196, 268), 4, 0x8D8880);
    s.stroke(Outline.circle(360, 236, 47), 1.4, 0xB9B09A);
    s.write("HORN", 331, 229, 15, 2, 0xD9D0B8);
    for (int i = 0; i < 3; i++) {
      double a = StrictMath.toRadians(90 + 120 * i);
      double x = 360 + 106 * StrictMath.cos(a);
      double y = 236 + 106 * StrictMath.sin(a);
      s.part(Outline.circle(x, y, 7), 0xB0A894);
      s.pen(Outline.line(x - 5, y - 3, x + 5, y + 3), 1.3);
    }
    s.remark("THE THUMB", 118, 120, 204, 127, 296, 178);
    s.remark("YELLOWISH", 528, 120, 556, 136, 426, 288);
    return s;
  }

  /** The maker's plate of a deluxe dropside, with its four pins. */
  static Canvas dataPlate() {
    Canvas s = new Canvas();
    Outline panel = Outline.box(40, 40, 640, 384);
    s.fill(panel, Shading.blend(40, 40, 0x33312F, 680, 424, 0x1F1E1E));
    s.inside(panel, () -> s.fill(panel, Shading.patches(60, 14, 0.66, 0x3A3836)));
    s.pen(panel, 1.4);
    Outline plate = Outline.soft(100, 76, 520, 312, 18);
    s.fill(plate.move(5, 7), Shading.veil(0x000000, 110));
    s.part(plate, Shading.blend(100, 76, 0xDCC88F, 620, 388, 0xA98C4E));
    s.inside(plate, () -> s.fill(plate, Shading.patches(26, 0.70, 0xB59C60)));
    s.stroke(Outline.soft(111, 87, 498, 290, 12), 2, 0x3C3320);
    s.fill(Outline.soft(124, 100, 472, 66, 6), 0x2A2722);
    centered(s, "TARROWBY MOTOR COMPANY", 112, 20, 2.8, 0xE0CB92);
    centered(s, "LIGHT TRUCK    TYPE L", 143, 13, 1.8, 0xE0CB92);
    field(s, "CHASSIS NUMBER", 138, 184, 250);
    field(s, "BUILT", 412, 184, 170);
    field(s, "ENGINE NUMBER", 138, 252, 250);
    field(s, "LOAD", 412, 252, 170);
    stamped(s, "L45 4388", 154, 207, 23);
    stamped(s, "5 - 34", 432, 208, 23);
    stamped(s, "E 20874", 153, 275, 23);
    s.write("12 CWT", 430, 277, 18, 2.2, 0x3C3320);
    s.write("OIL THE SPRINGS EVERY WEEK", 138, 326, 12, 1.7, 0x3C3320);
    s.write("USE NO FORCE ON THE LOWER GEARS", 138, 350, 12, 1.7, 0x3C3320);
    s.stroke(Outline.circle(540, 344, 25), 2, 0x3C3320);
    s.stroke(Outline.path("M522,352 H558 M526,352 V342 H538 V334 H550 L556,342 V352"), 2, 0x3C3320);
    s.stroke(Outline.circle(531, 354, 4).and(Outline.circle(550, 354, 4)), 2, 0x3C3320);
    double[][] pins = {{117, 93}, {603, 93}, {117, 371}, {603, 371}};
    for (double[] p : pins) {
      s.part(
          Outline.circle(p[0], p[1], 9), Shading.round(p[0] - 3, p[1] - 3, 12, 0xF1E3B8, 0x87703C));
      s.pen(Outline.arc(p[0], p[1], 4, 4, 30, 200), 1);
    }
    s.write("PINS NEVER DRAWN", 484, 404, 10, 1.1, 0xBDB5A5);
    s.stroke(Outline.line(600, 400, 603, 382), 0.8, 0xBDB5A5);
    return s;
  }

  /** Two lines on a door, a rule in tenths of an inch held to the lower, and its end enlarged. */
  static Canvas pinstripe() {
    Canvas s = new Canvas();
    Outline panel = Outline.box(30, 34, 660, 398);
    s.fill(panel, Shading.blend(30, 34, 0x7B3B41, 690, 432, 0x4E2329));
    s.inside(
        panel,
        () -> {
          s.fill(
              Outline.path("M30,58 H690 V92 H30 Z"),
              Shading.blend(0, 58, 0x93525A, 0, 92, 0x5A2A30));
          s.stroke(Outline.line(30, 58, 690, 58), 1.6, 0xA8707A);
          s.stroke(
              Outline.path("M30,75 C200,73 300,77 420,75 C520,74 600,76 690,75"), 21, 0xC59A52);
          s.stroke(
              Outline.path("M30,118 C120,117 190,119 300,118 C480,116 600,119 690,118"),
              21,
              0xC59A52);
          s.fill(Outline.ellipse(262, 118, 46, 13), 0xC59A52);
          s.fill(Outline.box(30, 100, 660, 34), Shading.patches(60, 3, 0.72, 0xD6AE69));
        });
    s.pen(panel, 1.6);
    Outline rule = Outline.box(196, 131, 470, 96);
    s.fill(rule.move(4, 6), Shading.veil(0x000000, 80));
    s.part(rule, Shading.blend(0, 131, 0xE9E9E4, 0, 227, 0xB4B5B1));
    for (int i = 0; i <= 22; i++) {
      double x = 204 + i * 20;
      double length = i % 10 == 0 ? 44 : i % 5 == 0 ? 30 : 19;
      s.stroke(Outline.line(x, 131, x, 131 + length), 1.2, 0x2B2B2B);
    }
    s.write("1", 410, 166, 17, 2, 0x2B2B2B).write("2", 610, 166, 17, 2, 0x2B2B2B);
    s.write("TENTHS OF AN INCH", 226, 200, 12, 1.5, 0x4A4A48);
    for (int i = 0; i <= 64; i++) {
      double x = 204 + i * 6.25;
      s.stroke(
          Outline.line(x, 227, x, 227 - (i % 8 == 0 ? 18 : i % 2 == 0 ? 12 : 8)), 0.8, 0x2B2B2B);
    }
    // What the glass shows: the line turned beside the marks.
    s.part(Outline.path("M300,384 L316,366 L404,410 L392,426 Z"), 0x4A3828);
    s.part(Outline.circle(226, 324, 100), Shading.blend(140, 230, 0xE0CF9A, 310, 420, 0x85703F));
    Outline glass = Outline.circle(226, 324, 89);
    s.fill(glass, 0x6C323A);
    s.inside(
        glass,
        () -> {
          s.fill(Outline.path("M130,262 Q226,256 330,263 L330,324 Q226,328 130,323 Z"), 0xC59A52);
          s.fill(Outline.box(130, 262, 200, 62), Shading.patches(80, 5, 0.66, 0xD6AE69));
          s.fill(Outline.box(226, 230, 110, 200), 0xDADAD5);
          for (int i = -1; i < 4; i++) {
            double y = 262 + i * 58;
            s.stroke(Outline.line(226, y, 286, y), 2.2, 0x2B2B2B);
            s.stroke(Outline.line(226, y + 29, 258, y + 29), 1.6, 0x2B2B2B);
          }
          s.fill(
              Outline.path("M160,262 Q226,220 290,266 Q226,240 160,262 Z"),
              Shading.veil(0xFFFFFF, 80));
        });
    s.pen(glass, 1.4);
    s.write("A TENTH, AND A LITTLE", 416, 290, 13, 1.7, 0xE6CFA0);
    s.write("IT SWELLS WHERE THE BRUSH", 416, 322, 10.5, 1.3, 0xD2B9A2);
    s.write("WAS LAID ON AGAIN", 416, 342, 10.5, 1.3, 0xD2B9A2);
    return s;
  }

  /** A number in a chassis rail, cleaned bright around the figures. */
  static Canvas chassisNumber() {
    Canvas s = new Canvas();
    Outline rail = Outline.path("M34,110 L686,96 L686,350 L34,366 Z");
    s.fill(rail, Shading.blend(0, 96, 0x4B4A48, 0, 366, 0x262628));
    s.inside(
        rail,
        () -> {
          s.fill(rail, Shading.patches(30, 0.62, 0x5A4335));
          s.fill(rail, Shading.patches(12, 0.74, RUST));
          Outline clean =
              Outline.path(
                  "M120,178 C180,150 260,168 350,156 C450,146 540,156 596,176 "
                      + "C616,220 604,270 580,292 C480,306 380,296 300,304 C220,310 150,302 122,284 "
                      + "C104,250 106,206 120,178 Z");
          s.fill(clean, 0xA9A69D);
          s.inside(
              clean,
              () -> {
                s.fill(clean, Shading.hatch(9, 1.4, 0.35, 0xC2BFB5));
                s.fill(clean, Shading.patches(16, 0.74, 0x8E7D6C));
              });
          s.stroke(clean, 2, 0x6B4A35);
        });
    s.pen(rail, 2);
    s.part(Outline.path("M34,110 L686,96 L686,76 L34,90 Z"), 0x6A6966);
    s.part(Outline.path("M34,366 L686,350 L686,372 L34,390 Z"), 0x1F1F20);
    String[] figures = {"L", "4", "1", "3", "7", "0", "2"};
    double[] left = {146, 204, 264, 330, 392, 454, 516};
    double[] tilt = {0, -2, 1, 3, -1, 1, -3};
    for (int i = 0; i < figures.length; i++) {
      double y = 200 + 2 * tilt[i];
      Outline cut = StrokeFont.of(figures[i], left[i], y, 62).turn(tilt[i], left[i] + 20, y + 31);
      s.stroke(cut.move(2, 2.5), 9, 0xD9D6CC);
      s.stroke(cut, 8, 0x35312D);
      s.stroke(cut.move(-1, -1), 2, 0x16140F);
    }
    double[][] rivets = {{76, 232}, {646, 222}};
    for (double[] r : rivets) {
      s.fill(Outline.circle(r[0] + 3, r[1] + 5, 24), Shading.veil(0x000000, 110));
      s.part(
          Outline.circle(r[0], r[1], 22),
          Shading.round(r[0] - 8, r[1] - 9, 30, 0x85807A, 0x2B2A2A));
    }
    s.remark("STRUCK ONE BY ONE", 60, 416, 190, 411, 230, 270);
    s.remark("CLEANED, NOT GROUND", 480, 416, 560, 411, 566, 284);
    return s;
  }

  private static void centered(Canvas s, String text, double y, double size, double pen, int rgb) {
    s.write(text, (Canvas.WIDTH - StrokeFont.width(text, size)) / 2, y, size, pen, rgb);
  }

  private static void field(Canvas s, String label, double x, double y, double width) {
    s.write(label, x, y, 10, 1.5, 0x3C3320);
    s.stroke(Outline.box(x, y + 16, width, 38), 1.6, 0x3C3320);
  }

  private static void stamped(Canvas s, String text, double x, double y, double size) {
    Outline cut = StrokeFont.of(text, x, y, size);
    s.stroke(cut.move(1.2, 1.4), 3.6, 0xEBDDAE);
    s.stroke(cut, 3, 0x2B2416);
  }
}
