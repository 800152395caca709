package assize.report.view;

/**
 * Who says so, and where.
 *
 * @param anchor the id of the source's entry; empty where it has none
 * @param grade its grade, A to D
 * @param where the place in the source; empty where none is given
 * @param repeats the sources that it copies and only repeats; empty where it is a witness
 */
public record CiteView(String anchor, String title, String grade, String where, String repeats) {}
