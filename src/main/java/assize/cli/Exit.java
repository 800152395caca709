package assize.cli;

/** How a command ends. */
final class Exit {
  static final int DONE = 0;

  /** The input has errors; nothing was written. */
  static final int BAD_INPUT = 1;

  static final int BAD_COMMAND_LINE = 2;
  static final int CANNOT_WRITE = 3;

  /** The program itself failed. */
  static final int FAILED = 4;

  private Exit() {}
}
