/** Starts and ends. */
final class Empty {
  private Empty() {}

  public static void main(String[] arguments) {}
}
