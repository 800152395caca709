package assize.report.vehicle;

import assize.report.html.Browser;
import java.io.IOException;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** What a reader may tick on a page, and what should then be seen, counted from the page's text. */
record FilterChoices(List<Choice> choices, List<Item> items) {
  /**
   * A box to tick.
   *
   * @param count how many items it says it has
   */
  record Choice(String id, String group, String words, int count) {}

  /** An item as it can be read. */
  record Item(String id, String verdict, String area, String sources, String hazard, String text) {
    private boolean is(Choice choice) {
      return switch (choice.group()) {
        case "Verdict" -> verdict.equals(choice.words());
        case "Area" -> area.equals(choice.words());
        case "Sources" -> sources.equals(choice.words());
        case "Hazards" -> hazard.equals(choice.words());
        default -> throw new AssertionError("no such group: " + choice.group());
      };
    }

    private boolean has(String words) {
      return Stream.of(plain(words).split("\\s+")).allMatch(plain(text)::contains);
    }

    /** Marks on letters and capitals make no difference. */
    private static String plain(String text) {
      return Normalizer.normalize(text, Normalizer.Form.NFD)
          .replaceAll("\\p{InCombiningDiacriticalMarks}", "")
          .toLowerCase(Locale.ROOT);
    }
  }

  /** Reads an open page. */
  static FilterChoices of(Browser browser) throws IOException {
    List<Choice> choices =
        browser
            .texts(
                "return [...document.querySelectorAll('#pick fieldset label')].map(l => [l.control.id,"
                    + " l.closest('fieldset').querySelector('legend').textContent,"
                    + " l.querySelector('.verdict, .choice').textContent,"
                    + " l.querySelector('.count').firstChild.textContent].join('\\n'));")
            .stream()
            .map(text -> text.split("\n", -1))
            .map(part -> new Choice(part[0], part[1], part[2], Integer.parseInt(part[3])))
            .toList();
    List<Item> items =
        browser.faults("items.js").stream()
            .map(text -> text.split("\n", 6))
            .map(part -> new Item(part[0], part[1], part[2], part[3], part[4], part[5]))
            .toList();
    return new FilterChoices(choices, items);
  }

  /** Returns the items that are each of what is ticked: any within a group, all of the groups. */
  List<String> expected(List<Choice> ticked, String words) {
    return items.stream()
        .filter(
            item ->
                ticked.stream()
                    .map(Choice::group)
                    .distinct()
                    .allMatch(
                        group ->
                            ticked.stream()
                                .filter(choice -> choice.group().equals(group))
                                .anyMatch(item::is)))
        .filter(item -> item.has(words))
        .map(Item::id)
        .toList();
  }
}
