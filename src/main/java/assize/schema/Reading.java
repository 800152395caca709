package assize.schema;

/** What reading facts needs; each kind of file adds its own. */
public interface Reading {
  ScalarReader values();
}
