package assize.photo;

/**
 * A decoded picture.
 *
 * @param rgb row by row, red in bits 16 to 23, green in 8 to 15, blue in 0 to 7
 */
record Pixels(int width, int height, int[] rgb) {}
