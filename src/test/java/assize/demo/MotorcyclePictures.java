package assize.demo;

/** The motorcycle: its tank and its engine. */
final class MotorcyclePictures {
  private static final int DARK_GREEN = 0x2D4A39;
  private static final int CREAM = 0xE3D7B4;
  private static final int GOLD = 0xB8955A;
  private static final int DARK = 0x2B2B2C;
  private static final int BRASS = 0xB99B57;
  private static final int COPPER = 0xA8673F;
  private static final int STEEL = 0xB9B5A8;

  private MotorcyclePictures() {}

  /** The tank with its knee grip turned back, and the line that lay under it. */
  static Canvas tankLining() {
    Canvas s = new Canvas();
    Outline tank =
        Outline.path(
            "M80,300 C70,210 110,130 220,106 C350,82 520,96 610,160 C660,198 668,250 640,300 "
                + "C600,350 480,360 340,356 C220,354 110,350 80,300 Z");
    s.fill(tank.move(4, 14), Shading.veil(0x000000, 45));
    s.fill(tank, Shading.blend(0, 100, 0x4A4A4A, 0, 350, 0x161617));
    Outline panel =
        Outline.path(
            "M116,292 C108,226 146,158 232,136 C350,112 506,122 584,176 C626,208 632,250 612,284 "
                + "C576,322 470,328 344,326 C236,324 136,324 116,292 Z");
    s.fill(panel, Shading.blend(0, 120, 0x3F6650, 0, 326, DARK_GREEN));
    s.inside(
        panel,
        () -> {
          s.fill(
              Outline.path("M150,190 C260,140 450,140 560,190 C450,164 260,164 150,190 Z"),
              0x5C8770);
          s.fill(panel, Shading.patches(12, 0.84, 0x274030));
        });
    s.stroke(panel, 6, GOLD);
    s.inside(panel, () -> s.stroke(panel, 2, 0xA27F45));
    Outline bare = Outline.path("M112,200 L330,150 L330,340 L96,340 Z");
    s.inside(
        bare,
        () -> {
          s.stroke(panel, 7, CREAM);
          s.fill(Outline.box(90, 130, 120, 210), Shading.patches(8, 0.82, 0x2F4D3B));
        });
    s.pen(tank, 2.2);
    s.stroke(Outline.path("M150,150 C260,96 470,100 580,150"), 3, 0x7D7D7A);
    // Filler cap and the ears of the tank.
    s.part(Outline.soft(366, 66, 74, 34, 8), Shading.blend(366, 0, 0xECE9E0, 440, 0, 0x86847C));
    for (int i = 0; i < 9; i++) {
      s.pen(Outline.line(372 + 8 * i, 70, 372 + 8 * i, 96), 0.9);
    }
    s.part(Outline.soft(378, 56, 50, 12, 6), 0xC9C6BC);
    s.write("QUILLHURST", 338, 206, 26, 4.5, GOLD);
    s.write("QUILLHURST", 337, 205, 26, 2.5, 0xC23B2E);
    // The grip hangs by its lower screw, and the outline of where it sat is paler.
    Outline seat = Outline.soft(150, 196, 132, 104, 40).turn(-6, 216, 248);
    s.stroke(seat, 1.2, 0x7D9C88);
    s.fill(Outline.circle(176, 262, 4), 0x15150F).fill(Outline.circle(262, 228, 4), 0x15150F);
    Outline grip =
        Outline.path(
            "M96,306 C120,286 190,288 228,306 C250,330 244,396 214,416 C170,430 116,424 92,402 C76,370 76,326 96,306 Z");
    s.fill(grip.move(5, 6), Shading.veil(0x000000, 70));
    s.part(grip, 0x46423E);
    s.inside(
        grip,
        () -> {
          s.fill(grip, Shading.hatch(13, 1.6, 1, 0x26231F));
          s.fill(grip, Shading.hatch(13, 1.6, -1, 0x26231F));
        });
    s.pen(grip, 2);
    s.remark("CREAM UNDER THE GRIP", 262, 400, 300, 395, 246, 322);
    s.remark("LATER BRONZE OVER IT", 492, 400, 560, 395, 568, 308);
    return s;
  }

  /** The motorcycle's engine in its frame, from the right. */
  static Canvas motorcycleEngine() {
    Canvas s = new Canvas();
    s.fill(Outline.ellipse(360, 424, 270, 12), Shading.veil(0x2A241C, 60));
    // Frame tubes behind.
    tube(s, Outline.path("M108,-10 L196,330 Q206,382 250,396"), 20);
    tube(s, Outline.path("M250,396 L560,396"), 16);
    tube(s, Outline.path("M506,-20 L556,396"), 20);
    tube(s, Outline.path("M-20,56 L520,64"), 18);
    // Crankcase and timing side.
    Outline casing =
        Outline.path(
            "M236,286 Q244,262 280,258 L400,256 Q470,258 486,310 Q494,356 452,388 Q410,408 330,404 Q250,398 236,340 Z");
    s.part(casing, Shading.blend(236, 256, 0xD2D1CA, 480, 404, 0x8D8D87));
    s.inside(casing, () -> s.fill(casing, Shading.patches(5, 0.62, 0xB4B4AD)));
    Outline cover =
        Outline.path(
            "M262,330 Q262,286 306,282 Q340,280 358,300 L440,304 Q470,310 468,338 Q464,368 430,368 L336,376 Q266,382 262,330 Z");
    s.part(cover, Shading.blend(262, 282, 0xF0EFE9, 468, 376, 0x9C9C95));
    s.stroke(Outline.path("M276,318 Q282,296 308,293 Q334,292 352,310 L436,314"), 3, 0xFFFFFF);
    double[][] screws = {
      {276, 344},
      {274, 308},
      {308, 290},
      {348, 300},
      {396, 308},
      {446, 314},
      {456, 346},
      {404, 364},
      {318, 368}
    };
    for (double[] p : screws) {
      s.part(Outline.circle(p[0], p[1], 4.5), STEEL);
      s.pen(Outline.line(p[0] - 3, p[1] - 2, p[0] + 3, p[1] + 2), 1);
    }
    s.stroke(
        Outline.path("M312,346 Q330,316 362,312 Q344,330 336,348 M316,342 L346,326"),
        1.8,
        0x6E6E68);
    s.part(Outline.soft(370, 322, 56, 32, 12), 0xC6C5BE);
    s.part(Outline.circle(384, 338, 6), BRASS).part(Outline.circle(412, 338, 6), BRASS);
    s.part(Outline.box(306, 398, 26, 12), BRASS);
    s.write("C1", 352, 386, 11, 1.8, 0x6A6A64);
    // Barrel with its eight fins, head with five, rocker box.
    s.part(Outline.box(296, 146, 92, 116), Shading.blend(296, 0, 0x4A4846, 388, 0, 0x222121));
    for (int i = 0; i < 8; i++) {
      double reach = 10 - 0.8 * i;
      double y = 246 - 13.4 * i;
      s.part(
          Outline.soft(284 - reach + 8, y, 116 + 2 * reach - 16, 7, 3.4),
          Shading.blend(280, 0, 0x57544F, 400, 0, 0x272625));
    }
    for (int i = 0; i < 5; i++) {
      double y = 138 - 11 * i;
      s.part(
          Outline.soft(270 + 3 * i, y, 142 - 6 * i, 6.4, 3),
          Shading.blend(270, 0, 0x7B7973, 412, 0, 0x44423E));
    }
    s.part(
        Outline.path("M286,92 Q288,72 316,70 L372,70 Q398,72 400,92 Z"),
        Shading.blend(0, 70, 0xF2F1EB, 0, 94, 0xA4A49D));
    s.part(Outline.circle(312, 84, 7), STEEL).part(Outline.circle(374, 84, 7), STEEL);
    s.part(Outline.path("M398,116 L420,108 L426,118 L404,128 Z"), STEEL);
    s.stroke(Outline.path("M424,112 C470,90 490,150 478,250 Q470,300 486,310"), 4, 0x2A2724);
    // Pushrod tubes in chromium.
    for (int i = 0; i < 2; i++) {
      double x = 316 + 30 * i;
      s.part(
          Outline.path(
              "M" + x + ",94 L" + (x + 12) + ",94 L" + (x + 11) + ",272 L" + (x + 1) + ",272 Z"),
          Shading.blend(x, 0, 0xFFFFFF, x + 12, 0, 0x85898B));
      s.part(Outline.box(x - 4, 266, 20, 14), BRASS);
    }
    // Exhaust to the front, straw and blue at the port.
    Outline pipe =
        Outline.path("M286,124 C236,116 196,140 186,210 C178,290 190,378 270,420 L690,424");
    s.stroke(pipe, 25, Canvas.INK);
    s.stroke(pipe, 22, 0xA9ADAE);
    s.stroke(pipe.move(-2, -4), 9, 0xE6E9E9);
    s.stroke(Outline.path("M284,124 C256,119 234,124 216,140"), 20, 0xB79A62);
    s.stroke(Outline.path("M262,120 C246,120 230,127 217,139"), 14, 0x77809A);
    s.stroke(Outline.path("M280,119 C256,114 232,120 214,134"), 5, 0xE0CFA2);
    s.part(Outline.soft(276, 108, 20, 32, 5), 0x8E8A7E);
    for (int i = 0; i < 4; i++) {
      s.pen(Outline.line(280 + 4 * i, 110, 280 + 4 * i, 138), 0.9);
    }
    // Carburetor at the back, float chamber, bell mouth, pipe.
    s.part(Outline.box(398, 132, 34, 20), 0x8E8A7E);
    s.part(
        Outline.path("M430,96 L458,96 L458,186 L430,186 Z"),
        Shading.blend(430, 0, 0xE0C98A, 458, 0, 0x8C713A));
    s.part(
        Outline.path("M458,126 L486,116 L486,168 L458,158 Z"),
        Shading.blend(0, 116, 0xE0C98A, 0, 168, 0x8C713A));
    s.part(Outline.soft(428, 84, 32, 14, 4), BRASS);
    s.part(Outline.soft(408, 176, 40, 40, 6), Shading.blend(408, 0, 0xE4CE92, 448, 0, 0x8C713A));
    s.part(Outline.soft(420, 168, 16, 10, 3), BRASS);
    s.stroke(
        Outline.path(
            "M428,216 C428,240 452,236 452,224 C452,212 436,214 440,230 C446,250 500,240 530,120"),
        5,
        Canvas.INK);
    s.stroke(
        Outline.path(
            "M428,216 C428,240 452,236 452,224 C452,212 436,214 440,230 C446,250 500,240 530,120"),
        3,
        COPPER);
    s.stroke(Outline.path("M444,84 C440,50 400,44 380,30"), 3, 0x2A2724);
    // Magneto behind, oil pipes.
    s.stroke(Outline.path("M384,338 C350,420 520,420 540,300"), 4.6, Canvas.INK);
    s.stroke(Outline.path("M384,338 C350,420 520,420 540,300"), 2.8, COPPER);
    s.part(Outline.path("M470,306 L622,306 L618,318 L474,318 Z"), 0x8E8A7E);
    s.part(
        Outline.path("M490,262 Q494,244 520,244 L590,244 Q606,246 606,268 L606,306 L492,306 Z"),
        Shading.blend(0, 244, 0x4E4B47, 0, 306, 0x232120));
    s.part(Outline.soft(604, 254, 26, 44, 6), 0x6A4636);
    s.part(Outline.box(520, 250, 50, 16), BRASS);
    s.write("07/31", 526, 254, 8, 1.1, 0x2D2416);
    s.remark("EIGHT FINS", 560, 200, 554, 206, 404, 216);
    s.remark("MARCH 1931", 574, 372, 568, 378, 372, 392);
    s.remark("STRAW AND BLUE", 148, 84, 226, 98, 238, 124);
    return s;
  }

  private static void tube(Canvas s, Outline along, double width) {
    s.stroke(along, width, Canvas.INK);
    s.stroke(along, width - 3, DARK);
    s.stroke(along.move(-width / 6, -width / 8), 2.4, 0x6C6964);
  }
}
