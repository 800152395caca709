package assize.image;

/**
 * What makes a stored picture upright: first swaps rows and columns, then mirrors left and right,
 * then flips top and bottom.
 */
record Turn(boolean swaps, boolean mirrors, boolean flips) {
  /** The picture is upright as it is. */
  static final Turn NONE = new Turn(false, false, false);

  /**
   * Returns what a value of the tag Orientation asks for; one that the standard does not define
   * asks for nothing (CIPA DC-008-2019, Exif 2.32, tag 0x0112).
   */
  static Turn of(int orientation) {
    return switch (orientation) {
      case 2 -> new Turn(false, true, false);
      case 3 -> new Turn(false, true, true);
      case 4 -> new Turn(false, false, true);
      case 5 -> new Turn(true, false, false);
      case 6 -> new Turn(true, true, false);
      case 7 -> new Turn(true, true, true);
      case 8 -> new Turn(true, false, true);
      default -> NONE;
    };
  }

  /** Returns where a part of the upright picture is in the stored one. */
  Box stored(Box upright) {
    int left = mirrors ? Box.WHOLE - upright.left() - upright.width() : upright.left();
    int top = flips ? Box.WHOLE - upright.top() - upright.height() : upright.top();
    return swaps
        ? new Box(top, left, upright.height(), upright.width())
        : new Box(left, top, upright.width(), upright.height());
  }

  /** Turns pixels. */
  Pixels upright(Pixels stored) {
    if (equals(NONE)) {
      return stored;
    }
    int width = swaps ? stored.height() : stored.width();
    int height = swaps ? stored.width() : stored.height();
    int[] turned = new int[width * height];
    for (int y = 0; y < stored.height(); y++) {
      for (int x = 0; x < stored.width(); x++) {
        int column = swaps ? y : x;
        int row = swaps ? x : y;
        int toX = mirrors ? width - 1 - column : column;
        int toY = flips ? height - 1 - row : row;
        turned[toY * width + toX] = stored.rgb()[y * stored.width() + x];
      }
    }
    return new Pixels(width, height, turned);
  }
}
