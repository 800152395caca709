package assize.cli;

/** Says when to look again at the files that are watched. */
interface PollSchedule {
  /** Waits until it is time for another look; false where watching is over. */
  boolean another();

  /** Says whether watching is to end, in the midst of a run even. */
  default boolean areOver() {
    return false;
  }
}
