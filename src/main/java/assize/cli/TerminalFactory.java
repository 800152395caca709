package assize.cli;

import picocli.CommandLine;

/** Makes the commands, each with the terminal that it writes to. */
final class TerminalFactory implements CommandLine.IFactory {
  private final Terminal terminal;

  TerminalFactory(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public <K> K create(Class<K> type) throws Exception {
    try {
      return type.getDeclaredConstructor(Terminal.class).newInstance(terminal);
    } catch (NoSuchMethodException e) {
      return CommandLine.defaultFactory().create(type);
    }
  }
}
