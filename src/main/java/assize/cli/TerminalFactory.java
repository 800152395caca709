package assize.cli;

import picocli.CommandLine;

/**
 * Makes the commands, each with the terminal that it writes to, and those that can go on with the
 * watch that they keep.
 */
final class TerminalFactory implements CommandLine.IFactory {
  private final Terminal terminal;
  private final Watch watch;

  TerminalFactory(Terminal terminal, Watch watch) {
    this.terminal = terminal;
    this.watch = watch;
  }

  @Override
  public <K> K create(Class<K> type) throws Exception {
    try {
      return type.getDeclaredConstructor(Terminal.class, Watch.class).newInstance(terminal, watch);
    } catch (NoSuchMethodException e) {
      return onTerminal(type);
    }
  }

  private <K> K onTerminal(Class<K> type) throws Exception {
    try {
      return type.getDeclaredConstructor(Terminal.class).newInstance(terminal);
    } catch (NoSuchMethodException e) {
      return CommandLine.defaultFactory().create(type);
    }
  }
}
