package assize.report.handbook;

import assize.aspect.DateCodeFormatter;
import assize.aspect.DateCodes;
import assize.evidence.Claim;
import assize.evidence.DisputeState;
import assize.judge.RuleSetWeigher;
import assize.pattern.DateCodePattern;
import assize.report.handbook.HandbookItemView.AspectView;
import assize.report.handbook.HandbookItemView.ClaimStatement;
import assize.report.handbook.HandbookItemView.CourseView;
import assize.report.handbook.HandbookItemView.Teller;
import assize.report.handbook.HandbookView.Fact;
import assize.report.view.AnchorIds;
import assize.report.view.NumberFormatter;
import assize.ruleset.AspectRule;
import assize.ruleset.Item;
import assize.timeline.AspectTimeline;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The items of the handbook. */
final class HandbookItemViewFactory {
  private static final Set<String> PLAIN =
      Set.of(
          HandbookTimelines.state(DisputeState.AGREED),
          HandbookTimelines.state(DisputeState.UNSOURCED));

  private final HandbookContext reading;
  private final HandbookTimelines courses;
  private final RuleSetWeigher weighing;

  HandbookItemViewFactory(HandbookContext reading) {
    this.reading = reading;
    this.courses = new HandbookTimelines(reading);
    this.weighing = RuleSetWeigher.by(reading.rules());
  }

  HandbookItemView view(Item item, int number) {
    return new HandbookItemView(
        AnchorIds.item(item.id()),
        number,
        item.id(),
        item.title(),
        NumberFormatter.points(item.points()),
        reading.scopes().of(item.scope()),
        item.look().orElse(""),
        item.hazards().stream().map(it -> new Fact(it.word(), it.precaution())).toList(),
        item.notes().orElse(""),
        item.cause().orElse(""),
        item.aspects().stream().map(rule -> aspect(item, rule)).toList());
  }

  private AspectView aspect(Item item, AspectRule rule) {
    AspectTimeline standing = AspectTimeline.of(reading.rules(), weighing, item, rule);
    List<ClaimStatement> sayings = statements(item, rule);
    List<CourseView> views = new ArrayList<>();
    boolean only = standing.courses().size() == 1;
    for (int i = 0; i < standing.courses().size(); i++) {
      String anchor = AnchorIds.item(item.id()) + "." + rule.aspect().ordinal() + "." + (i + 1);
      views.add(courses.view(item, rule, standing.courses().get(i), only, anchor));
    }
    Optional<String> plain = sayings.size() == 1 ? plain(views) : Optional.empty();
    return new AspectView(
        rule.aspect().spoken(),
        NumberFormatter.points(rule.possible()),
        rule.aspect().kind().hasWordsOfItem()
            ? item.choices().entrySet().stream()
                .map(one -> new Fact(one.getKey(), one.getValue()))
                .toList()
            : List.of(),
        codes(rule),
        sayings,
        plain.orElse(""),
        plain.isPresent() ? List.of() : views,
        standing.tooMany()
            ? "The sources ask for so many facts together that how it stands is not laid out here;"
                + " each says above of which vehicles it speaks."
            : "");
  }

  /** Returns the state where one saying is all that is right wherever the item applies. */
  private static Optional<String> plain(List<CourseView> courses) {
    List<String> states =
        courses.stream()
            .flatMap(course -> course.stands().stream())
            .map(stand -> stand.right().isEmpty() ? "" : stand.state())
            .distinct()
            .toList();
    return states.size() == 1 && courses.stream().allMatch(course -> course.stands().size() == 1)
        ? Optional.of(states.get(0)).filter(PLAIN::contains)
        : Optional.empty();
  }

  private List<ClaimStatement> statements(Item item, AspectRule rule) {
    Map<String, List<Claim>> alike = new LinkedHashMap<>();
    for (Claim claim : rule.claims()) {
      String says = manner(claim) + words(item, rule, claim);
      alike.computeIfAbsent(says, it -> new ArrayList<>()).add(claim);
    }
    return alike.values().stream()
        .map(
            claims ->
                new ClaimStatement(
                    manner(claims.get(0)),
                    words(item, rule, claims.get(0)),
                    reading.words().swatches(claims.get(0).values()),
                    claims.stream().map(this::teller).toList()))
        .toList();
  }

  private String words(Item item, AspectRule rule, Claim claim) {
    return reading.words().any(item, rule.aspect(), claim.values());
  }

  private static String manner(Claim claim) {
    return switch (claim.manner()) {
      case SAYS -> "";
      case LEAVES_OPEN -> "leaves open";
      case RULES_OUT -> "rules out";
    };
  }

  private Teller teller(Claim claim) {
    return new Teller(
        claim.source().map(it -> reading.cite(it, claim.citation().orElse(""))),
        reading.scopes().of(claim.scope()),
        claim
            .photo()
            .map(
                it -> it.caption().map(caption -> caption + " ").orElse("") + "(" + it.file() + ")")
            .orElse(""));
  }

  /** Returns how date codes are written, and what their letters mean. */
  private static List<Fact> codes(AspectRule rule) {
    Map<String, DateCodePattern> codes = new LinkedHashMap<>();
    rule.claims().stream()
        .flatMap(claim -> claim.values().stream())
        .forEach(
            value -> {
              if (value instanceof DateCodes.Right made) {
                codes.put(made.code().text(), made.code());
              }
            });
    return codes.values().stream()
        .map(code -> new Fact(code.text(), DateCodeFormatter.whole(code)))
        .toList();
  }
}
