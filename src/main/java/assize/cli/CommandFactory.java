package assize.cli;

import picocli.CommandLine;

/**
 * Makes the commands, each with the terminal that it writes to, and those that can go on with the
 * watch that they keep.
 */
final class CommandFactory implements CommandLine.IFactory {
  private final Terminal terminal;
  private final FileWatcher watch;

  CommandFactory(Terminal terminal, FileWatcher watch) {
    this.terminal = terminal;
    this.watch = watch;
  }

  @Override
  public <K> K create(Class<K> type) throws Exception {
    try {
      return type.getDeclaredConstructor(Terminal.class, FileWatcher.class)
          .newInstance(terminal, watch);
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
