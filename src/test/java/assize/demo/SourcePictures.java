package assize.demo;

/** What the sources on the truck show: a photograph, a drawing, a letter, a catalog, a corner. */
final class SourcePictures {
  private static final int GREEN = 0x3A5E4A;
  private static final int MAROON = 0x6B3338;
  private static final int BLACK = 0x2B2B2C;
  private static final int SHEET = 0xE9E1CC;
  private static final int LINE = 0x4A4438;

  private SourcePictures() {}

  /** The factory photograph: a gray plate on which green and black are one dark tone. */
  static Canvas worksPhotograph() {
    Canvas s = new Canvas();
    Outline plate = Outline.box(50, 44, 620, 376);
    s.fill(plate, Shading.blend(0, 44, 0xC9C7C2, 0, 420, 0x8C8A86));
    s.inside(
        plate,
        () -> {
          s.fill(Outline.box(50, 300, 620, 130), Shading.blend(0, 300, 0x9C9A96, 0, 420, 0x7A7875));
          s.fill(
              Outline.path("M50,90 H270 V300 H50 Z"),
              Shading.blend(50, 0, 0xB5B3AE, 270, 0, 0xA3A19D));
          for (int i = 0; i < 3; i++) {
            s.fill(Outline.box(74 + 64 * i, 120, 44, 92), 0xD6D4CF);
            s.stroke(Outline.line(96 + 64 * i, 120, 96 + 64 * i, 212), 2, 0x9A9894);
          }
          s.fill(Outline.ellipse(386, 368, 270, 20), Shading.veil(0x202020, 90));
          truck(s, 0x8F8D89, 0x4B4A48, 0x4B4A48);
          s.fill(plate, Shading.patches(26, 0.83, 0xB0AEAA));
        });
    s.stroke(plate, 1.4, 0x5A5854);
    s.fill(Outline.path("M50,44 L92,44 L50,88 Z"), 0xF4EEE1);
    s.write("11", 630, 58, 18, 2, 0xEDEBE6);
    s.remark("ONE DARK TONE", 320, 96, 366, 112, 340, 262);
    return s;
  }

  /** A truck from the right rear with its side let down, in three tones. */
  private static void truck(Canvas s, int cab, int bed, int side) {
    s.part(Outline.path("M180,318 L610,314 L610,330 L180,336 Z"), 0x2E2D2C);
    Outline body =
        Outline.path(
            "M470,314 L470,196 Q470,172 492,170 L560,168 Q578,168 582,186 L592,232 L640,238 L642,312 Z");
    s.part(body, cab);
    s.part(Outline.path("M486,224 L486,190 Q488,182 498,182 L536,181 L536,222 Z"), 0xD5D8D4);
    s.part(Outline.path("M546,222 L546,181 L560,181 Q568,182 570,192 L576,221 Z"), 0xC4C7C3);
    s.pen(Outline.line(541, 176, 542, 310), 1.4);
    Outline box = Outline.path("M150,232 L456,222 L456,304 L150,310 Z");
    s.part(box, bed);
    s.pen(Outline.line(150, 258, 456, 250), 1.2).pen(Outline.line(150, 284, 456, 278), 1.2);
    Outline down = Outline.path("M164,312 L452,306 L440,352 L150,360 Z");
    s.part(down, side);
    s.pen(Outline.line(160, 328, 448, 322), 1.2).pen(Outline.line(155, 344, 444, 338), 1.2);
    for (int i = 0; i < 3; i++) {
      double x = 196 + 104 * i;
      s.part(
          Outline.path(
              "M" + x + ",300 L" + (x + 16) + ",300 L" + (x + 8) + ",356 L" + (x - 8) + ",356 Z"),
          0x3A3938);
    }
    wheel(s, 236, 350);
    wheel(s, 576, 342);
  }

  private static void wheel(Canvas s, double x, double y) {
    s.part(Outline.circle(x, y, 38), 0x2A2928);
    s.part(Outline.circle(x, y, 25), Shading.round(x - 8, y - 8, 36, 0xA9A7A2, 0x5E5C58));
    s.part(Outline.circle(x, y, 8), 0x3A3938);
  }

  /** The finishing drawing: its notes, of which one speaks of the bed, and its title block. */
  static Canvas finishingNotes() {
    Canvas s = new Canvas();
    sheet(s);
    s.write("FINISHING", 64, 62, 18, 1.8, LINE);
    String[] notes = {
      "5  CAB AND HOOD, COLOR TO ORDER",
      "6  WHEELS, CREAM",
      "7  BED AND SIDES, INSIDE AND OUT,",
      "WORKS GREEN",
      "8  FLOOR, LINSEED OIL, TWO COATS",
      "9  CHAIN SLEEVES, HIDE"
    };
    double y = 106;
    for (String note : notes) {
      boolean more = !Character.isDigit(note.charAt(0));
      s.write(note, more ? 92 : 64, y, 13, 1.4, LINE);
      y += 31;
    }
    s.stroke(
        HandDrawnLine.unsteady(Outline.path("M60,164 L52,164 L52,218 L60,218")), 1.8, 0x8A3B2E);
    s.stroke(HandDrawnLine.unsteady(Outline.line(90, 218, 204, 219)), 1.8, 0x8A3B2E);
    s.stroke(Outline.box(410, 320, 270, 106), 1.6, LINE);
    s.stroke(Outline.line(410, 352, 680, 352), 1, LINE);
    s.stroke(Outline.line(410, 388, 680, 388), 1, LINE);
    s.stroke(Outline.line(560, 352, 560, 426), 1, LINE);
    s.write("TARROWBY MOTOR CO.", 422, 330, 12, 1.4, LINE);
    s.write("L45 DELUXE", 422, 364, 11, 1.3, LINE).write("L-388", 572, 364, 11, 1.3, LINE);
    s.write("SHEET 2 OF 2", 422, 400, 11, 1.3, LINE).write("OCT 1933", 572, 400, 11, 1.3, LINE);
    s.remark("NOTE 7", 470, 212, 466, 216, 216, 206);
    return s;
  }

  private static void sheet(Canvas s) {
    Outline sheet = Outline.path("M36,34 L690,38 L686,434 L40,430 Z");
    s.fill(sheet.move(4, 5), Shading.veil(0x2A241C, 50));
    s.fill(sheet, SHEET);
    s.inside(
        sheet,
        () -> {
          s.fill(sheet, Shading.patches(70, 0.66, 0xE3D9C0));
          s.stroke(Outline.line(362, 30, 364, 440), 1, 0xD2C7AC);
          s.stroke(Outline.line(30, 236, 700, 238), 1, 0xD2C7AC);
        });
    s.stroke(sheet, 1, 0xB8AC90);
  }

  /** The corner of the survivor's bed with its plate lifted: black beneath, farm paint around. */
  static Canvas survivorCorner() {
    Canvas s = new Canvas();
    Outline boards = Outline.path("M40,90 L680,70 L680,400 L40,412 Z");
    s.fill(boards, 0x7C6A4E);
    s.inside(
        boards,
        () -> {
          s.fill(boards, Shading.patches(70, 9, 0.50, 0x6D5D45));
          s.fill(boards, Shading.patches(90, 16, 0.62, 0x8A4B37));
          s.pen(Outline.line(40, 196, 680, 180), 2).pen(Outline.line(40, 304, 680, 292), 2);
          Outline under = Outline.path("M150,118 L360,112 L362,178 L226,184 L230,372 L154,376 Z");
          s.fill(under, BLACK);
          s.fill(under, Shading.patches(34, 8, 0.68, 0x3B3B3B));
          s.inside(under, () -> s.fill(boards, Shading.patches(14, 4, 0.82, 0xB99A6E)));
          s.stroke(under, 2, 0x54402F);
          for (double[] hole : new double[][] {{186, 148}, {316, 146}, {190, 250}, {192, 340}}) {
            s.fill(Outline.circle(hole[0], hole[1], 9), 0x0F0F0F);
            s.stroke(Outline.arc(hole[0], hole[1], 9, 9, 20, 160), 1.4, 0xB99A6E);
          }
        });
    s.pen(boards, 2);
    Outline plate = Outline.path("M430,210 L636,168 L648,230 L516,258 L556,416 L486,432 Z");
    s.fill(plate.move(7, 9), Shading.veil(0x000000, 80));
    s.fill(plate, 0x5A4335);
    s.inside(
        plate,
        () -> {
          s.fill(plate, Shading.patches(20, 0.60, 0x7D5136));
          s.fill(plate, Shading.patches(10, 0.78, 0x3F332B));
        });
    s.pen(plate, 2);
    for (double[] hole : new double[][] {{472, 232}, {600, 206}, {494, 306}, {514, 392}}) {
      s.part(Outline.ellipse(hole[0], hole[1], 9, 8), 0x16161A);
    }
    s.remark("BLACK UNDER THE PLATE", 44, 52, 150, 66, 196, 200);
    s.remark("THE FARM'S BRUSH", 500, 52, 560, 66, 600, 128);
    return s;
  }

  /** The catalog's color plate: a bed as red as its cab. */
  static Canvas catalogPage() {
    Canvas s = new Canvas();
    sheet(s);
    s.write("FOR THE SEASON OF 1934", 64, 58, 14, 1.8, MAROON);
    s.stroke(Outline.line(64, 84, 660, 86), 1.4, MAROON);
    Outline frame = Outline.box(62, 100, 600, 270);
    s.fill(frame, Shading.blend(0, 100, 0xD9E2DC, 0, 370, 0xCDBF98));
    s.inside(
        frame,
        () -> {
          s.fill(Outline.path("M62,300 Q240,262 400,292 Q560,316 662,280 V372 H62 Z"), 0xA9AE7C);
          s.fill(Outline.ellipse(386, 366, 250, 14), Shading.veil(0x40382A, 90));
          truck(s, MAROON, MAROON, 0x7A4044);
        });
    s.pen(frame, 1.4);
    s.write("THE DELUXE DROPSIDE, L45", 64, 388, 13, 1.6, LINE);
    s.remark("BED AS THE CAB", 470, 404, 468, 408, 352, 270);
    return s;
  }

  /** The service letter: typed lines, one of which is underlined. */
  static Canvas serviceLetter() {
    Canvas s = new Canvas();
    sheet(s);
    s.write("TARROWBY MOTOR COMPANY", 64, 58, 16, 1.9, GREEN);
    s.stroke(Outline.line(64, 86, 640, 88), 1.2, GREEN);
    s.write("SERVICE LETTER 9", 64, 104, 12, 1.5, LINE).write("DEC. 1933", 560, 104, 12, 1.5, LINE);
    String[] lines = {
      "TOUCHING UP AND REPAINTING.",
      "",
      "FOR THE FRAME USE CHASSIS BLACK AS SUPPLIED.",
      "BLACK IS NOT USED ON ANY WOODEN PART",
      "OF THE BODY. A THIN DARK GROUND IS LAID",
      "UNDER ALL COLORS AND MUST BE COVERED."
    };
    double y = 150;
    for (String line : lines) {
      s.write(line, 64, y, 12, 1.5, LINE);
      y += 33;
    }
    s.stroke(HandDrawnLine.unsteady(Outline.line(62, 268, 452, 270)), 1.8, 0x8A3B2E);
    s.stroke(HandDrawnLine.unsteady(Outline.line(62, 301, 190, 302)), 1.8, 0x8A3B2E);
    for (int i = 0; i < 2; i++) {
      s.fill(Outline.circle(48, 140 + 190 * i, 8), 0xF4EEE1);
      s.stroke(Outline.circle(48, 140 + 190 * i, 8), 1, 0xB8AC90);
    }
    s.remark("THIRD PARAGRAPH", 520, 258, 516, 262, 462, 262);
    return s;
  }

  /** A line of the motorcycle's finishing schedule, ruled by hand. */
  static Canvas finishingSchedule() {
    Canvas s = new Canvas();
    sheet(s);
    s.write("FINISHING SCHEDULE Q", 64, 58, 16, 1.9, LINE).write("SHEET 6", 560, 58, 14, 1.7, LINE);
    for (int i = 0; i < 8; i++) {
      s.stroke(Outline.line(56, 96 + 40 * i, 668, 97 + 40 * i), 1, 0x8E866F);
    }
    for (double x : new double[] {56, 110, 400, 668}) {
      s.stroke(Outline.line(x, 96, x, 377), 1, 0x8E866F);
    }
    String[][] rows = {
      {"", "PART", "FINISH"},
      {"1", "TANK SIDES", "ENAMEL, BLACK"},
      {"2", "TANK PANEL", "QUILL GREEN"},
      {"3", "TRANSFER", "GOLD AND RED"},
      {"4", "LINE ROUND PANEL", "OLD GOLD, BY HAND"},
      {"5", "LINE ON FENDERS", "NONE"},
      {"6", "VARNISH", "ONE COAT"}
    };
    for (int i = 0; i < rows.length; i++) {
      double y = 109 + 40 * i;
      s.write(rows[i][0], 74, y, 13, 1.5, LINE);
      s.write(rows[i][1], 124, y, 13, 1.5, LINE).write(rows[i][2], 414, y, 13, 1.5, LINE);
    }
    s.stroke(HandDrawnLine.unsteady(Outline.ellipse(500, 276, 118, 22)), 1.8, 0x8A3B2E);
    s.remark("LINE 4", 590, 396, 606, 392, 580, 296);
    return s;
  }

  /** A survivor's tank close up: what is left of its line is pale. */
  static Canvas survivorTank() {
    Canvas s = new Canvas();
    Outline tank = Outline.path("M30,60 Q360,20 690,90 L690,430 L30,430 Z");
    s.fill(tank, Shading.blend(0, 40, 0x55524C, 0, 430, 0x1E1D1C));
    Outline panel = Outline.path("M30,150 Q360,104 690,178 L690,430 L30,430 Z");
    s.inside(
        tank,
        () -> {
          s.fill(panel, Shading.blend(0, 120, 0x4A6654, 0, 430, 0x2D4A39));
          s.fill(panel, Shading.patches(30, 0.70, 0x3A5443));
          s.stroke(Outline.path("M30,150 Q360,104 690,178"), 16, 0xD8CBA4);
          s.fill(
              Outline.path("M20,130 Q360,84 700,158 L700,204 Q360,128 20,174 Z"),
              Shading.patches(16, 7, 0.70, 0x51604F));
          s.fill(panel, Shading.patches(9, 0.83, 0x7C5138));
          s.fill(tank, Shading.patches(7, 0.85, 0x7C5138));
          Outline shine = Outline.path("M60,86 Q360,46 660,112 L660,120 Q360,56 60,96 Z");
          s.fill(shine, Shading.veil(0xFFFFFF, 60));
        });
    s.pen(tank, 2);
    Outline grip = Outline.path("M120,250 Q300,216 470,262 L454,420 Q290,436 136,420 Z");
    s.fill(grip, 0x35322F);
    s.inside(
        grip,
        () -> {
          s.fill(grip, Shading.hatch(16, 2, 1, 0x211F1C));
          s.fill(grip, Shading.hatch(16, 2, -1, 0x211F1C));
        });
    s.pen(grip, 2);
    s.remark("PALE, NOT METALLIC", 474, 27, 540, 40, 520, 144);
    return s;
  }

  /**
   * The motorcycle's factory photograph: a lamp-lit gray from which some finishes can't be told.
   */
  static Canvas motorcyclePhotograph() {
    Canvas s = new Canvas();
    Outline plate = Outline.box(50, 44, 620, 376);
    s.fill(plate, Shading.blend(0, 44, 0xDAD8D3, 0, 420, 0xB0AEA9));
    s.inside(
        plate,
        () -> {
          s.fill(Outline.box(50, 356, 620, 70), Shading.blend(0, 356, 0xA9A7A2, 0, 420, 0x8B8985));
          s.fill(Outline.ellipse(360, 376, 260, 14), Shading.veil(0x202020, 90));
          for (double x : new double[] {190, 530}) {
            s.stroke(Outline.circle(x, 296, 76), 15, 0x2F2E2D);
            s.stroke(Outline.circle(x, 296, 64), 4, 0xA4A29D);
            for (int i = 0; i < 18; i++) {
              s.stroke(Outline.line(x + 12, 296, x + 62, 296).turn(20 * i, x, 296), 0.9, 0x7E7C78);
            }
            s.part(Outline.circle(x, 296, 15), 0x55534F);
          }
          s.stroke(
              Outline.path("M190,296 L276,300 L330,316 L440,310 L488,170 L530,296"), 7, 0x2A2928);
          s.stroke(Outline.path("M190,296 L258,196 L486,176"), 7, 0x2A2928);
          s.part(
              Outline.path(
                  "M284,196 Q300,152 380,150 L470,160 Q492,172 484,196 L456,210 L300,212 Z"),
              Shading.blend(0, 150, 0x7C7A76, 0, 212, 0x3A3937));
          s.part(Outline.path("M196,188 Q240,168 286,186 L280,202 L204,204 Z"), 0x373533);
          s.part(Outline.path("M356,220 L414,216 L424,300 L350,304 Z"), 0x8D8B86);
          for (int i = 0; i < 6; i++) {
            s.pen(Outline.line(350, 228 + 8 * i, 424, 224 + 8 * i), 1.6);
          }
          s.part(Outline.circle(386, 318, 32), 0x8A8884);
          s.part(
              Outline.soft(268, 292, 120, 42, 21),
              Shading.blend(0, 292, 0xC6C4BF, 0, 334, 0xA2A09B));
          s.stroke(Outline.path("M486,172 L470,140 Q440,124 404,134"), 6, 0xC9C7C2);
          s.part(Outline.circle(516, 176, 20), Shading.round(508, 168, 30, 0xD0CEC9, 0x4A4946));
          s.fill(plate, Shading.patches(24, 0.84, 0xC4C2BD));
        });
    s.stroke(plate, 1.4, 0x5A5854);
    s.write("63", 630, 58, 18, 2, 0x5A5854);
    s.remark("BRIGHT, BUT OF WHICH METAL", 96, 96, 290, 110, 420, 130);
    s.remark("DARK HUB", 590, 190, 620, 205, 540, 290);
    s.remark("FLAT LIGHT ON THE CASE", 70, 140, 130, 155, 300, 306);
    return s;
  }
}
