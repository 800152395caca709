package assize.compare;

/** What a change can alter of the items that it bears on. */
public enum Effect {
  /** Nothing: only the wording changed. */
  NONE,
  /** Items that are not assessed. */
  NOT_ASSESSED,
  /** Items that depart on purpose. */
  DEPARTURES,
  /** Any of them, where other build dates are possible. */
  BUILD_DATES,
  /** Any of them. */
  ANY
}
