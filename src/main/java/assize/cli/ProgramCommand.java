package assize.cli;

import java.util.List;

/**
 * A command as it is typed, and what does it.
 *
 * @param group what it is for
 * @param summary what it does, in a few words, as the help of the program says; empty where its
 *     name says enough
 */
record ProgramCommand(String name, Class<?> command, CommandGroup group, String summary) {
  /** All commands, in the order of the help. */
  static final List<ProgramCommand> ALL =
      List.of(
          vehicle("new", NewCommand.class, "Create a record to fill in"),
          vehicle(
              "sheet",
              SheetCommand.class,
              "Make an inspection sheet for paper, phone or spreadsheet"),
          vehicle("merge", MergeCommand.class, "Add other people's findings to a record"),
          vehicle("judge", JudgeCommand.class, "Judge vehicles and write reports"),
          vehicle("dossier", DossierCommand.class, "Write a page on each disputed item"),
          vehicle("prove", ProveCommand.class, "Print proof codes for masked numbers"),
          vehicle("verify", VerifyCommand.class, "Check a number against a redacted copy"),
          club("check", CheckCommand.class, "Check rule sets and records"),
          club("handbook", HandbookCommand.class, "Write a rule set as a readable handbook"),
          club("compare", CompareCommand.class, "Show what changed between two editions"),
          club(
              "results",
              ResultsCommand.class,
              "Judge a folder of records and write a results page"),
          lookUp("date", DateCommand.class, "Show which days a date covers"),
          lookUp("number", NumberCommand.class, "Date a chassis or engine number"),
          lookUp("color", ColorCommand.class, "Compare two colors"),
          lookUp("explain", ExplainCommand.class, "Explain a message"),
          setUp("demo", DemoCommand.class),
          setUp("schema", SchemaCommand.class),
          setUp("completion", CompletionCommand.class),
          setUp("manual", ManualCommand.class));

  private static ProgramCommand vehicle(String name, Class<?> command, String summary) {
    return new ProgramCommand(name, command, CommandGroup.VEHICLE, summary);
  }

  private static ProgramCommand club(String name, Class<?> command, String summary) {
    return new ProgramCommand(name, command, CommandGroup.CLUB, summary);
  }

  private static ProgramCommand lookUp(String name, Class<?> command, String summary) {
    return new ProgramCommand(name, command, CommandGroup.LOOK_UP, summary);
  }

  private static ProgramCommand setUp(String name, Class<?> command) {
    return new ProgramCommand(name, command, CommandGroup.SET_UP, "");
  }
}
