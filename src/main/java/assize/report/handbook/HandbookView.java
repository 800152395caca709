package assize.report.handbook;

import assize.report.chart.Chart;
import assize.report.view.FileView;
import assize.report.view.HazardView;
import assize.report.view.LinkView;
import java.util.List;
import java.util.Optional;

/**
 * A rule set as a handbook, in the order in which it is read; an empty text stands for what it does
 * not say.
 *
 * @param edition as in "edition 3, March 2026"
 * @param facts of the title page
 * @param scoring how it is scored
 * @param vehicles models, and what else tells vehicles apart
 * @param uncited sources that no item cites
 * @param index the items by title
 * @param stamps part numbers and date codes, as patterns
 */
public record HandbookView(
    String id,
    String name,
    String edition,
    List<Fact> facts,
    String purpose,
    String notes,
    HandbookScoringView scoring,
    Vehicles vehicles,
    List<NumberTableView> tables,
    List<HandbookAreaView> areas,
    Words words,
    List<SourceEntry> sources,
    Optional<Copying> copying,
    List<LinkView> uncited,
    List<HazardView> hazards,
    String afterHazards,
    List<IndexEntry> index,
    List<Stamp> stamps,
    List<FileView> files) {
  public HandbookView {
    facts = List.copyOf(facts);
    tables = List.copyOf(tables);
    areas = List.copyOf(areas);
    sources = List.copyOf(sources);
    uncited = List.copyOf(uncited);
    hazards = List.copyOf(hazards);
    index = List.copyOf(index);
    stamps = List.copyOf(stamps);
    files = List.copyOf(files);
  }

  /** Something in a word or two, and what there is to say of it. */
  public record Fact(String name, String words) {}

  /**
   * A word of the rule set.
   *
   * @param id as it is written in a record
   * @param more what else there is to say of it
   * @param items where it matters
   */
  public record WordEntry(String id, String name, String more, List<LinkView> items) {
    public WordEntry {
      items = List.copyOf(items);
    }
  }

  /** What tells vehicles apart. */
  public record Vehicles(
      List<WordEntry> models,
      List<WordEntry> equipment,
      List<WordEntry> plants,
      List<WordEntry> markets) {
    public Vehicles {
      models = List.copyOf(models);
      equipment = List.copyOf(equipment);
      plants = List.copyOf(plants);
      markets = List.copyOf(markets);
    }
  }

  /**
   * A number table.
   *
   * @param wide its numbers along the days; without one where there is nothing to draw
   */
  public record NumberTableView(
      String id, String name, Optional<Chart> wide, Optional<Chart> narrow, List<Series> series) {
    public NumberTableView {
      series = List.copyOf(series);
    }
  }

  /** Numbers given out one after the other. */
  public record Series(String name, List<NumberRow> rows, List<Fact> reserved) {
    public Series {
      rows = List.copyOf(rows);
      reserved = List.copyOf(reserved);
    }
  }

  /** A number and its days. */
  public record NumberRow(String number, String days) {}

  /** The words that items are told in. */
  public record Words(
      List<ColorEntry> colors,
      List<WordEntry> finishes,
      List<WordEntry> materials,
      List<Fact> origins,
      List<Fact> conditions) {
    public Words {
      colors = List.copyOf(colors);
      finishes = List.copyOf(finishes);
      materials = List.copyOf(materials);
      origins = List.copyOf(origins);
      conditions = List.copyOf(conditions);
    }
  }

  /**
   * A color.
   *
   * @param swatch a list of one, or of none where it has no figures
   */
  public record ColorEntry(
      String id,
      String name,
      List<String> swatch,
      String lab,
      String tolerance,
      List<LinkView> items) {
    public ColorEntry {
      swatch = List.copyOf(swatch);
      items = List.copyOf(items);
    }
  }

  /** A source. */
  public record SourceEntry(
      String anchor,
      String id,
      String title,
      String kind,
      String grade,
      String weight,
      String date,
      String heldBy,
      List<LinkView> copies,
      List<LinkView> items,
      String notes) {
    public SourceEntry {
      copies = List.copyOf(copies);
      items = List.copyOf(items);
    }
  }

  /**
   * Who copies whom, drawn and in words.
   *
   * @param rows who, and whom
   */
  public record Copying(Chart wide, Chart narrow, List<Fact> rows) {
    public Copying {
      rows = List.copyOf(rows);
    }
  }

  /** An item by its title. */
  public record IndexEntry(String letter, List<LinkView> items) {
    public IndexEntry {
      items = List.copyOf(items);
    }
  }

  /** What is stamped or cast, and where. */
  public record Stamp(String text, String what, LinkView item) {}
}
