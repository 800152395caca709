package assize.demo;

/** The truck from inside: its cab, and the engine under its hood. */
final class InsidePictures {
  private static final int GRAY = 0x8B8D8A;
  private static final int BLACK = 0x2B2B2C;
  private static final int MAROON = 0x652F36;
  private static final int OAK = 0xB08D5F;
  private static final int CREAM = 0xDDD0A8;
  private static final int NICKEL = 0xE9E4D4;
  private static final int TARNISH = 0x8E8774;
  private static final int BRASS = 0xB99B57;
  private static final int COPPER = 0xA8673F;
  private static final int STEEL = 0xB9B5A8;

  private InsidePictures() {}

  /** Seat, panel and levers, seen through the open left door. */
  static Canvas cabInterior() {
    Canvas s = new Canvas();
    s.part(Outline.path("M40,40 H680 V432 H40 Z"), 0x55483C);
    s.fill(
        Outline.path("M64,60 H656 V420 H64 Z"),
        Shading.blend(64, 60, 0xB59E7C, 656, 420, 0x8A7558));
    // Rear wall with its small window, roof bow, far door.
    s.part(
        Outline.path("M470,60 H656 V300 H470 Z"),
        Shading.blend(470, 0, 0xA58D6B, 656, 0, 0x7E6A50));
    s.part(Outline.soft(524, 92, 96, 66, 8), Shading.blend(524, 92, 0xD3D9D2, 620, 158, 0x9BA59E));
    s.part(Outline.path("M64,60 L656,60 L656,78 Q360,92 64,78 Z"), OAK);
    // Windshield and cowl on the left.
    s.part(
        Outline.path("M84,92 L300,92 L286,204 L84,214 Z"),
        Shading.blend(84, 92, 0xDCE1DA, 286, 214, 0xA7B1AA));
    s.fill(Outline.path("M120,210 L196,92 L226,92 L154,210 Z"), Shading.veil(0xFFFFFF, 80));
    s.part(Outline.path("M296,84 L314,84 L298,218 L282,220 Z"), MAROON);
    s.part(
        Outline.path("M64,214 L298,204 L330,262 L318,296 L64,304 Z"),
        Shading.blend(0, 204, 0x3E3B39, 0, 304, 0x222121));
    s.part(Outline.path("M84,226 L276,218 L290,284 L84,292 Z"), 0x2C2A29);
    double[] dials = {118, 178, 240};
    for (int i = 0; i < 3; i++) {
      double r = i == 1 ? 29 : 20;
      double x = dials[i];
      double y = 258 - 3.0 * i;
      s.part(
          Outline.circle(x, y, r + 4), Shading.blend(x - r, y - r, NICKEL, x + r, y + r, TARNISH));
      s.part(Outline.circle(x, y, r), i == 1 ? CREAM : 0x1D1C1B);
      int marks = i == 1 ? 0x3C3320 : 0xC9C3B0;
      for (int k = 0; k < 11; k++) {
        Outline mark = Outline.line(x + r - 7, y, x + r - 3, y).turn(150 + 24 * k, x, y);
        s.stroke(mark, 1.1, marks);
      }
      s.stroke(
          Outline.line(x, y, x + r - 8, y).turn(200 + 40 * i, x, y),
          1.8,
          i == 1 ? 0xA23329 : 0xE6E0CC);
    }
    double[][] screws = {{90, 232}, {272, 224}, {90, 286}, {284, 279}, {148, 229}, {214, 286}};
    for (double[] p : screws) {
      s.part(Outline.circle(p[0], p[1], 3), TARNISH);
    }
    // Toe board, mat, levers.
    s.part(
        Outline.path("M64,304 L318,296 L400,372 L400,420 L64,420 Z"),
        Shading.blend(64, 300, 0x6E5B45, 64, 420, 0x4E4031));
    s.part(Outline.path("M110,352 L344,342 L398,396 L398,420 L100,420 Z"), 0x343231);
    s.inside(
        Outline.path("M112,354 L342,344 L396,397 L396,418 L102,418 Z"),
        () -> {
          for (int i = 0; i < 24; i++) {
            s.stroke(Outline.line(90 + 14 * i, 342, 100 + 14 * i, 424), 1.2, 0x4E4B48);
          }
        });
    s.part(Outline.soft(134, 318, 32, 24, 5), 0x555049)
        .part(Outline.soft(186, 315, 32, 24, 5), 0x555049);
    s.part(Outline.soft(236, 318, 18, 34, 5), 0x46423D);
    s.stroke(Outline.path("M330,394 Q336,330 318,274 L312,244"), 8, Canvas.INK);
    s.stroke(Outline.path("M330,394 Q336,330 318,274 L312,244"), 5, 0x8A857B);
    s.part(Outline.circle(311, 238, 13), Shading.round(306, 232, 18, 0x5B5450, 0x151413));
    s.part(Outline.ellipse(331, 392, 20, 9), 0x22201F);
    s.stroke(Outline.line(372, 398, 388, 300), 8, Canvas.INK);
    s.stroke(Outline.line(372, 398, 388, 300), 5, 0x78746C);
    s.part(Outline.soft(380, 278, 14, 32, 6).turn(9, 387, 294), BLACK);
    // Wheel and column.
    s.stroke(Outline.line(214, 330, 336, 214), 9, Canvas.INK);
    s.stroke(Outline.line(214, 330, 336, 214), 6, 0x3F3E3C);
    Outline rim = Outline.ellipse(352, 196, 34, 104).turn(18, 352, 196);
    s.stroke(rim, 13, Canvas.INK);
    s.stroke(rim, 10, 0x4F4032);
    s.stroke(rim.move(-2, -1), 2, 0x8A745C);
    s.pen(Outline.line(322, 188, 384, 204), 4).pen(Outline.line(352, 196, 330, 280), 4);
    s.part(Outline.ellipse(352, 196, 12, 18).turn(18, 352, 196), NICKEL);
    // Seat in brown leathercloth.
    Outline back =
        Outline.path("M496,176 Q500,158 524,158 L640,160 Q654,162 654,180 L650,314 L478,312 Z");
    Outline cushion =
        Outline.path(
            "M408,312 Q404,296 430,294 L648,300 Q658,302 656,318 L654,366 L414,364 Q404,340 408,312 Z");
    s.part(back, Shading.blend(480, 160, 0x7A5638, 650, 314, 0x51371F));
    for (int i = 0; i < 5; i++) {
      s.pen(
          Outline.path(
              "M" + (518 + 28 * i) + ",162 Q" + (510 + 30 * i) + ",240 " + (502 + 32 * i) + ",312"),
          1.3);
      s.stroke(
          Outline.path(
              "M" + (521 + 28 * i) + ",166 Q" + (513 + 30 * i) + ",240 " + (505 + 32 * i) + ",308"),
          1,
          0x9B7855);
    }
    s.part(cushion, Shading.blend(0, 294, 0x84603F, 0, 366, 0x4E351F));
    for (int i = 0; i < 5; i++) {
      s.pen(
          Outline.path(
              "M" + (448 + 42 * i) + ",296 Q" + (440 + 43 * i) + ",330 " + (444 + 43 * i) + ",364"),
          1.3);
    }
    s.stroke(Outline.path("M408,314 Q404,297 430,295 L648,301"), 2.4, 0xA07F5A);
    s.part(Outline.path("M412,366 L654,368 L654,420 L418,420 Z"), MAROON);
    s.part(Outline.path("M40,40 H680 V432 H656 V60 H64 V420 H656 V432 H40 Z"), MAROON);
    return s;
  }

  /** The left side of the truck's engine: casting date, distributor, fan, flywheel housing. */
  static Canvas engineLeft() {
    Canvas s = new Canvas();
    s.fill(Outline.ellipse(370, 420, 290, 14), Shading.veil(0x2A241C, 70));
    // Flywheel housing, oil pan, block, head.
    s.part(
        Outline.path("M556,150 Q640,150 646,250 Q648,350 560,368 Z"),
        Shading.blend(556, 0, 0x7B807C, 650, 0, 0x4A4E4B));
    for (int i = 0; i < 5; i++) {
      s.part(Outline.circle(628 - 3 * (i - 2) * (i - 2), 180 + 37 * i, 5), STEEL);
    }
    s.part(
        Outline.path(
            "M172,330 L560,330 L552,396 Q548,410 530,410 L300,410 L280,388 L190,386 Q174,386 172,370 Z"),
        Shading.blend(0, 330, 0x5E625F, 0, 410, 0x363937));
    s.pen(Outline.line(172, 344, 560, 344), 1.4);
    for (int i = 0; i < 13; i++) {
      s.part(Outline.circle(188 + 30 * i, 337, 4), STEEL);
    }
    s.part(Outline.soft(430, 400, 26, 14, 4), BRASS);
    Outline block = Outline.path("M166,168 L562,168 L562,330 L166,330 Z");
    s.part(block, Shading.blend(0, 168, 0x828884, 0, 330, 0x5A5F5C));
    s.inside(block, () -> s.fill(block, Shading.patches(9, 0.82, 0x70756F)));
    s.part(
        Outline.path(
            "M160,120 L566,120 Q574,120 574,130 L574,168 L154,168 L154,130 Q154,120 160,120 Z"),
        Shading.blend(0, 120, 0x8E938F, 0, 168, 0x646966));
    s.pen(Outline.line(154, 158, 574, 158), 1.2);
    for (int i = 0; i < 9; i++) {
      s.part(Outline.box(172 + 47 * i, 106, 14, 14), STEEL);
      s.part(Outline.box(175 + 47 * i, 98, 8, 9), 0x8E8A7E);
    }
    for (int i = 0; i < 4; i++) {
      double x = 212 + 94 * i;
      s.part(Outline.box(x - 6, 92, 12, 26), 0xEDE6D6);
      s.part(Outline.box(x - 9, 112, 18, 9), STEEL);
      s.part(Outline.circle(x, 89, 5), BRASS);
    }
    // Side cover of the valves, with its two nuts.
    s.part(Outline.soft(196, 196, 130, 60, 8), Shading.blend(0, 196, 0x8A908C, 0, 256, 0x636865));
    s.part(Outline.soft(420, 196, 124, 60, 8), Shading.blend(0, 196, 0x8A908C, 0, 256, 0x636865));
    s.part(Outline.circle(261, 226, 8), STEEL).part(Outline.circle(482, 226, 8), STEEL);
    // Casting date, raised on a flat.
    Outline pad = Outline.soft(214, 274, 124, 40, 5);
    s.part(pad, 0x767B78);
    Outline raised = StrokeFont.of("C19-4", 226, 282, 24);
    s.stroke(raised.move(2, 2.4), 4.2, 0x3E4240);
    s.stroke(raised, 4.2, 0x9AA09C);
    s.stroke(raised.move(-0.6, -0.8), 1.2, 0xC9CEC9);
    // Distributor on its slanting shaft, four leads and the one to the coil.
    double[][] ends = {{212, 86}, {306, 86}, {400, 86}, {494, 86}};
    for (int i = 0; i < 4; i++) {
      Outline lead =
          Outline.path(
              "M"
                  + (356 + 10 * i)
                  + ",186 C"
                  + (346 + 12 * i)
                  + ",120 "
                  + (ends[i][0] + (i < 2 ? 50 : -50))
                  + ",52 "
                  + ends[i][0]
                  + ","
                  + ends[i][1]);
      s.stroke(lead, 5.2, Canvas.INK);
      s.stroke(lead, 3, 0x6A4B34);
    }
    s.part(
        Outline.path("M362,262 L388,262 L386,322 L364,322 Z"),
        Shading.blend(362, 0, 0x8A8F8B, 388, 0, 0x4F5351));
    s.part(
        Outline.path("M338,224 H412 L404,264 H346 Z"),
        Shading.blend(338, 0, STEEL, 412, 0, 0x6F6B62));
    s.write("4836", 360, 236, 12, 1.8, 0x2D2A26);
    s.part(
        Outline.path("M336,224 Q334,190 352,184 L398,184 Q416,190 414,224 Z"),
        Shading.blend(336, 184, 0x6A4636, 414, 224, 0x33211A));
    for (int i = 0; i < 4; i++) {
      s.part(Outline.soft(350 + 13 * i, 174, 9, 13, 3), 0x3D271E);
    }
    s.stroke(Outline.path("M344,214 L340,244 L348,250"), 2.6, BRASS);
    s.stroke(Outline.path("M406,214 L410,244 L402,250"), 2.6, BRASS);
    // Timing cover, pulley, fan.
    s.part(
        Outline.path("M166,176 L126,196 Q112,204 112,226 L112,330 Q114,352 140,356 L172,356 Z"),
        Shading.blend(112, 0, 0x8B908C, 170, 0, 0x5C605E));
    s.part(Outline.box(94, 286, 20, 56), 0x4A4947).part(Outline.box(88, 280, 8, 68), 0x5D5B57);
    s.part(Outline.box(94, 150, 18, 42), 0x4A4947);
    s.stroke(Outline.path("M98,152 L98,342"), 7, 0x3A2F26);
    s.part(
        Outline.path("M76,60 Q90,110 84,168 L74,168 Q62,110 66,62 Z"),
        Shading.blend(62, 0, 0x9A9F9B, 90, 0, 0x5B605D));
    s.part(
        Outline.path("M74,176 L84,176 Q92,230 78,284 L68,282 Q62,230 74,176 Z"),
        Shading.blend(62, 0, 0x9A9F9B, 90, 0, 0x5B605D));
    s.part(Outline.soft(66, 156, 42, 30, 8), Shading.blend(0, 156, 0x7A7F7B, 0, 186, 0x474A48));
    // Filler, dipstick, fuel pipe.
    s.part(Outline.path("M516,330 L520,290 L536,290 L540,330 Z"), GRAY);
    s.part(Outline.soft(510, 278, 36, 14, 5), BRASS);
    s.stroke(
        Outline.path("M560,300 C584,290 588,210 590,140 Q590,110 610,104 L660,100"), 5, Canvas.INK);
    s.stroke(
        Outline.path("M560,300 C584,290 588,210 590,140 Q590,110 610,104 L660,100"), 3, COPPER);
    s.remark("CASTING DATE", 60, 392, 140, 386, 222, 306);
    s.remark("DISTRIBUTOR, STAMPED UNDER THE CLIP", 380, 40, 440, 56, 402, 238);
    return s;
  }
}
