package assize.demo;

/** The truck from outside: its side, its radiator, its tail lamps. */
final class TruckPictures {
  private static final int GREEN = 0x3A5E4A;
  private static final int GRAY = 0x8B8D8A;
  private static final int BLUE = 0x4A5A70;
  private static final int BLACK = 0x2B2B2C;
  private static final int NICKEL = 0xE9E4D4;
  private static final int TARNISH = 0x8E8774;

  private TruckPictures() {}

  /** The left side as it stood in its shed: gray over blue over green. */
  static Canvas cabSide() {
    Canvas s = new Canvas();
    s.fill(
        Outline.path("M20,396 Q360,386 700,398 V444 H20 Z"), Shading.hatch(11, 1.2, 3, 0xBDB39D));
    s.fill(Outline.ellipse(356, 398, 320, 16), Shading.veil(0x2A241C, 90));
    s.part(Outline.path("M70,346 L662,342 L662,362 L70,366 Z"), 0x232323);
    // Bed, its boards gone gray.
    Outline bed = Outline.path("M404,236 L672,230 L674,330 L404,336 Z");
    s.part(bed, 0xA29C8E);
    s.inside(
        bed,
        () -> {
          s.fill(bed, Shading.patches(60, 5, 0.60, 0x8B8678));
          s.fill(bed, Shading.patches(40, 6, 0.74, GREEN));
          s.pen(Outline.line(400, 270, 680, 264), 1.6).pen(Outline.line(400, 303, 680, 297), 1.6);
          for (double x : new double[] {424, 530, 640}) {
            s.part(Outline.box(x, 226, 14, 112), 0x5C5A54);
            s.fill(Outline.circle(x + 7, 252, 2.5), BLACK)
                .fill(Outline.circle(x + 7, 284, 2.5), BLACK);
            s.fill(Outline.circle(x + 7, 316, 2.5), BLACK);
          }
        });
    // Cab and hood in one tone, so that the coats of paint run through.
    Outline cab =
        Outline.path(
            "M250,336 L246,238 L262,236 L284,134 Q288,118 306,117 L372,114 Q392,114 394,132 L398,338 Z");
    Outline hood = Outline.path("M94,336 L92,240 Q94,226 110,225 L246,220 L250,336 Z");
    painted(s, hood);
    painted(s, cab);
    s.part(
        Outline.path(
            "M272,130 Q280,104 310,104 L376,101 Q404,102 404,122 L400,128 Q396,114 374,116 L308,119 Q288,120 284,136 Z"),
        0x3A3937);
    s.part(
        Outline.path("M286,218 L298,144 Q300,136 308,136 L332,135 L334,216 Z"),
        Shading.blend(290, 136, 0xC9D0CB, 334, 218, 0x8C968F));
    s.part(
        Outline.path("M346,134 L376,133 L378,214 L347,216 Z"),
        Shading.blend(346, 134, 0xC2C9C4, 378, 216, 0x828B85));
    s.fill(Outline.path("M296,210 L322,140 L330,140 L306,212 Z"), Shading.veil(0xFFFFFF, 90));
    s.pen(Outline.path("M268,232 L266,330 L342,328 L340,134"), 1.8);
    s.pen(Outline.line(248, 238, 396, 230), 1.6);
    s.part(Outline.soft(322, 244, 17, 6, 3), TARNISH);
    s.part(Outline.box(261, 250, 9, 14), 0x4A4A48).part(Outline.box(261, 300, 9, 14), 0x4A4A48);
    for (int i = 0; i < 9; i++) {
      s.stroke(Outline.line(130 + 11 * i, 258, 133 + 11 * i, 312), 3.2, 0x45443F);
      s.stroke(Outline.line(132.5 + 11 * i, 258, 135.5 + 11 * i, 312), 1, 0xBBB9AE);
    }
    s.pen(Outline.line(94, 244, 250, 240), 1.4);
    s.part(
        Outline.path("M80,338 L80,238 Q80,226 92,226 L100,226 L104,338 Z"),
        Shading.blend(80, 0, NICKEL, 104, 0, TARNISH));
    s.part(Outline.soft(82, 214, 16, 13, 4), TARNISH);
    // Lamp on its post.
    s.part(Outline.box(86, 262, 5, 46), BLACK);
    s.part(Outline.path("M60,244 Q96,240 100,262 Q96,284 60,282 Z"), BLACK);
    s.part(Outline.ellipse(60, 263, 6, 20), Shading.blend(54, 0, 0xE6E2D0, 66, 0, 0xA9A48F));
    // Fenders and running board.
    s.part(
        Outline.path(
            "M62,342 C66,276 116,256 166,270 C214,284 226,330 262,346 L396,344 L398,356 L256,360 C214,350 202,306 164,296 C124,286 92,306 88,346 Z"),
        BLACK);
    s.stroke(
        Outline.path("M72,326 C84,280 124,266 164,278 C206,292 220,332 258,348"), 1.8, 0x77736C);
    s.part(
        Outline.path(
            "M470,336 C480,286 530,268 570,278 C616,288 628,316 632,336 L614,336 C606,306 590,298 564,296 C528,292 502,306 494,338 Z"),
        BLACK);
    wheel(s, 150, 348);
    wheel(s, 562, 348);
    s.remark("GRAY", 190, 160, 208, 175, 208, 240);
    s.remark("BLUE BELOW IT", 34, 176, 100, 191, 131, 231);
    s.remark("GREEN BELOW THAT", 34, 120, 151, 135, 151, 232);
    s.write("AS FOUND", 560, 60, 16, 2, 0x5A5348);
    s.stroke(Outline.line(560, 84, 660, 84), 1, 0x5A5348);
    return s;
  }

  private static void painted(Canvas s, Outline panel) {
    s.fill(panel, Shading.blend(0, 120, 0xA0A29E, 0, 336, GRAY));
    s.inside(
        panel,
        () -> {
          s.fill(panel, Shading.patches(38, 0.56, BLUE));
          s.fill(panel, Shading.patches(38, 0.645, GREEN));
          s.fill(panel, Shading.patches(8, 0.84, 0x7C5138));
        });
    s.pen(panel, 2);
  }

  private static void wheel(Canvas s, double x, double y) {
    s.part(Outline.circle(x, y, 50), 0x302F2E);
    s.stroke(Outline.circle(x, y, 44), 1, 0x57544F);
    s.part(Outline.circle(x, y, 34), Shading.round(x - 10, y - 12, 50, 0x6A6863, 0x3A3937));
    for (int i = 0; i < 6; i++) {
      Outline hole = Outline.ellipse(x + 22, y, 5, 7).turn(30 + 60 * i, x, y);
      s.part(hole, 0x1C1B1A);
    }
    s.part(Outline.circle(x, y, 12), Shading.round(x - 4, y - 4, 16, 0xB9B4A4, 0x5B564B));
  }

  /** The radiator from the front, and a forged bracket behind its shoulder. */
  static Canvas radiator() {
    Canvas s = new Canvas();
    s.fill(Outline.ellipse(360, 428, 330, 12), Shading.veil(0x2A241C, 80));
    // Fenders, then the beam that the lamps stand on.
    for (int side = -1; side <= 1; side += 2) {
      Outline fender =
          Outline.path("M520,440 L520,300 C530,238 590,216 636,236 C672,254 682,330 680,440 Z");
      s.part(
          fender.scale(side, 1, 360, 0),
          Shading.blend(360 + side * 160, 220, 0x4B494A, 360 + side * 320, 440, 0x1D1D1E));
      Outline tire = Outline.path("M574,440 L574,330 Q574,300 602,300 Q630,300 630,330 L630,440 Z");
      s.part(tire.scale(side, 1, 360, 0), 0x343231);
      for (int i = 0; i < 8; i++) {
        double y = 326 + 15 * i;
        s.pen(
            Outline.path("M580," + y + " L602," + (y + 7) + " L624," + y).scale(side, 1, 360, 0),
            1.4);
      }
      s.stroke(
          Outline.path("M528,330 C540,262 588,240 630,252").scale(side, 1, 360, 0), 2, 0x8A857C);
    }
    s.part(Outline.box(146, 262, 428, 12), BLACK);
    Outline shell =
        Outline.path("M206,416 L206,150 C206,92 262,74 360,74 C458,74 514,92 514,150 L514,416 Z");
    s.part(
        Outline.path("M492,150 L560,172 L566,196 L552,204 L540,188 L500,180 Z"),
        Shading.blend(500, 150, 0x5A5855, 560, 200, 0x2C2B2B));
    s.part(Outline.circle(552, 190, 9), 0x8E8A80);
    s.pen(Outline.line(546, 190, 558, 190), 1.2);
    s.part(shell, Shading.blend(206, 0, 0xF4F1E6, 514, 0, 0x98917E));
    s.inside(
        shell,
        () -> {
          s.fill(
              Outline.path(
                  "M222,420 L222,156 C224,112 270,94 360,92 L360,84 C250,86 212,110 212,156 L212,420 Z"),
              0xFFFDF6);
          s.fill(
              Outline.path(
                  "M500,420 L500,160 C496,128 470,108 420,98 C486,104 512,126 512,160 L512,420 Z"),
              Shading.veil(0x5C5646, 130));
        });
    Outline core =
        Outline.path(
            "M240,398 L240,182 C240,158 290,148 360,148 C430,148 480,158 480,182 L480,398 Z");
    s.fill(core, 0x2A2826);
    s.inside(
        core,
        () -> {
          s.fill(core, Shading.hatch(7.5, 1.3, 0, 0x6E6457));
          for (int i = 0; i < 26; i++) {
            s.stroke(Outline.line(240, 152 + 10 * i, 480, 152 + 10 * i), 1.6, 0x514A41);
          }
          s.fill(Outline.path("M240,140 H330 L250,420 H240 Z"), Shading.veil(0xD9D2BE, 34));
        });
    s.pen(core, 2);
    Outline badge = Outline.ellipse(360, 118, 62, 19);
    s.part(badge, GREEN);
    s.stroke(Outline.ellipse(360, 118, 57, 15.5), 1.2, NICKEL);
    s.write("TARROWBY", 360 - StrokeFont.width("TARROWBY", 12) / 2, 112, 12, 1.7, 0xF2EAD2);
    s.part(Outline.soft(330, 52, 60, 24, 7), Shading.blend(330, 0, NICKEL, 390, 0, TARNISH));
    for (int i = 0; i < 8; i++) {
      s.pen(Outline.line(336 + 7 * i, 56, 336 + 7 * i, 72), 0.9);
    }
    s.part(Outline.soft(340, 40, 40, 13, 6), Shading.blend(340, 0, NICKEL, 380, 0, TARNISH));
    s.part(Outline.circle(360, 404, 15), BLACK);
    s.part(Outline.circle(360, 404, 7), 0x111111);
    for (int side = -1; side <= 1; side += 2) {
      double x = 360 + side * 192;
      s.part(Outline.box(x - 5, 268, 10, 60), BLACK);
      s.part(
          Outline.circle(x, 262, 58), Shading.blend(x - 58, 210, 0xF6F3EA, x + 58, 320, 0x8B8574));
      Outline glass = Outline.circle(x, 262, 49);
      s.part(glass, Shading.round(x - 12, 250, 70, 0xF1EFE2, 0xA8AAA0));
      s.inside(
          glass,
          () -> {
            for (int i = -6; i <= 6; i++) {
              s.stroke(
                  Outline.path(
                      "M" + (x + 8 * i) + ",206 Q" + (x + 9 * i) + ",262 " + (x + 8 * i) + ",320"),
                  0.9,
                  0xC4C4B6);
            }
            s.fill(Outline.circle(x, 262, 11), Shading.round(x, 262, 11, 0xFFFBE8, 0xC9C3A8));
          });
    }
    s.remark("STAY BRACKET", 574, 128, 600, 144, 556, 178);
    s.remark("SHELL, NICKEL", 46, 128, 128, 144, 216, 176);
    return s;
  }

  /** The two tail lamps: the maker's on the right, a second hung from a clip on the left. */
  static Canvas tailLamp() {
    Canvas s = new Canvas();
    Outline board = Outline.path("M30,56 L690,50 L690,236 L30,240 Z");
    s.part(board, GREEN);
    s.inside(
        board,
        () -> {
          s.fill(board, Shading.patches(90, 8, 0.64, 0x446B55));
          s.pen(Outline.line(30, 116, 690, 111), 2).pen(Outline.line(30, 177, 690, 172), 2);
          for (double x : new double[] {110, 350, 590}) {
            s.part(Outline.box(x, 46, 26, 200), 0x2F4D3D);
            for (int i = 0; i < 3; i++) {
              s.part(Outline.circle(x + 13, 84 + 60 * i, 5), 0x1F2F27);
            }
          }
        });
    s.part(
        Outline.path("M30,240 L690,236 L690,276 L30,280 Z"),
        Shading.blend(0, 240, 0x4A4A4A, 0, 280, 0x202021));
    // Right: the bracket with its number, bolted through the rail.
    s.part(
        Outline.path(
            "M470,246 L504,246 L506,298 Q506,316 524,316 L560,316 L560,334 L512,334 Q484,334 482,304 Z"),
        0x333233);
    s.part(Outline.circle(487, 258, 6), 0x8D887C);
    s.write("LB-7731", 512, 283, 8, 1.1, 0x3B3732);
    lamp(s, 560, 338);
    // The license plate under it.
    s.part(Outline.path("M386,352 L490,352 L490,420 L386,420 Z"), 0x222223);
    s.stroke(Outline.box(391, 357, 94, 58), 1.2, 0xE4E0D2);
    s.write("L 45", 414, 366, 16, 2.6, 0xE9E5D8).write("438", 416, 392, 16, 2.6, 0xE9E5D8);
    s.fill(Outline.path("M520,330 L488,352 L488,420 L524,364 Z"), Shading.veil(0xF4E3A0, 70));
    // Left: the clip that grips the rail's edge.
    s.part(
        Outline.path(
            "M150,232 L206,232 L206,244 L164,244 L164,274 L206,274 L206,288 L186,288 L186,318 L168,318 L168,288 L150,288 Z"),
        Shading.blend(150, 0, 0xB7B4AA, 206, 0, 0x716D64));
    s.part(Outline.circle(196, 281, 7), 0xCFCBBE).pen(Outline.line(190, 281, 202, 281), 1.2);
    s.part(Outline.circle(196, 238, 5), 0xCFCBBE);
    lamp(s, 178, 338);
    s.stroke(
        Outline.path("M218,350 Q300,398 350,344 Q372,318 400,308 Q440,302 482,318"), 3, 0x3A3229);
    s.stroke(
        Outline.path("M218,349 Q300,397 350,343 Q372,317 400,307 Q440,301 482,317"), 1, 0x7C6C58);
    s.remark("A CLIP, NO HOLES", 236, 288, 232, 292, 206, 286);
    s.remark("TWO NUTS", 44, 306, 126, 306, 190, 282);
    s.remark("THE MAKER'S", 584, 414, 622, 409, 598, 374);
    return s;
  }

  private static void lamp(Canvas s, double x, double y) {
    s.fill(Outline.circle(x + 5, y + 8, 46), Shading.veil(0x2A241C, 60));
    s.part(Outline.circle(x, y + 2, 46), Shading.round(x - 16, y - 14, 64, 0x5A585A, 0x1B1B1C));
    s.part(
        Outline.circle(x, y + 2, 38),
        Shading.blend(x - 38, y - 36, NICKEL, x + 38, y + 40, TARNISH));
    Outline glass = Outline.circle(x, y + 2, 30);
    s.part(glass, Shading.round(x - 8, y - 8, 40, 0xD2483C, 0x6E1B1A));
    s.inside(
        glass,
        () -> {
          for (int ring = 1; ring < 5; ring++) {
            s.stroke(Outline.circle(x, y + 2, 6.5 * ring), 0.9, 0x8E2A26);
          }
          s.fill(
              Outline.ellipse(x - 11, y - 9, 9, 5).turn(-35, x - 11, y - 9),
              Shading.veil(0xFFFFFF, 110));
        });
  }
}
