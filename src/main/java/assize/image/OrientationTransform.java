package assize.image;

/**
 * What makes a stored picture upright: first swaps rows and columns, then mirrors left and right,
 * then flips top and bottom.
 */
record OrientationTransform(boolean swaps, boolean mirrors, boolean flips) {
  /** The picture is upright as it is. */
  static final OrientationTransform NONE = new OrientationTransform(false, false, false);

  /**
   * Returns what a value of the tag Orientation asks for; one that the standard does not define
   * asks for nothing (CIPA DC-008-2019, Exif 2.32, tag 0x0112).
   */
  static OrientationTransform of(int orientation) {
    return switch (orientation) {
      case 2 -> new OrientationTransform(false, true, false);
      case 3 -> new OrientationTransform(false, true, true);
      case 4 -> new OrientationTransform(false, false, true);
      case 5 -> new OrientationTransform(true, false, false);
      case 6 -> new OrientationTransform(true, true, false);
      case 7 -> new OrientationTransform(true, true, true);
      case 8 -> new OrientationTransform(true, false, true);
      default -> NONE;
    };
  }

  /** Returns where a part of the upright picture is in the stored one. */
  BlackoutBox stored(BlackoutBox upright) {
    int left = mirrors ? BlackoutBox.WHOLE - upright.left() - upright.width() : upright.left();
    int top = flips ? BlackoutBox.WHOLE - upright.top() - upright.height() : upright.top();
    return swaps
        ? new BlackoutBox(top, left, upright.height(), upright.width())
        : new BlackoutBox(left, top, upright.width(), upright.height());
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
