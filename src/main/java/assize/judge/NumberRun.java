package assize.judge;

/** Numbers of one series in a row of which a rule set says the same, both ends included. */
public record NumberRun(long first, long last) {}
