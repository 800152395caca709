package assize.cli;

/** What commands are for, as the help of the program groups them. */
enum CommandGroup {
  VEHICLE("For one vehicle"),
  CLUB("For a club"),
  LOOK_UP("Look up"),
  SET_UP("Set up");

  private final String title;

  CommandGroup(String title) {
    this.title = title;
  }

  String title() {
    return title;
  }
}
