package lodeswing.web.sheet;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lodeswing.figure.PlateMagnet;
import lodeswing.sheet.OutcomePlan;
import lodeswing.sheet.OutcomeSheet;
import lodeswing.sheet.Paper;
import lodeswing.web.hand.HandByAddress;
import lodeswing.web.jobs.Answerable;
import lodeswing.web.jobs.ComputedAnswers;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.layout.LayoutQuery;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.odds.LabelOdds;
import lodeswing.web.plate.PlateMap;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.representation.Asking;
import lodeswing.web.representation.CachePolicy;
import lodeswing.web.representation.Negotiation;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import lodeswing.web.safety.SafetyNotes;
import lodeswing.words.Words;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** The labels of a chooser to print, with their chances where a hand is named. */
@RestController
final class OutcomeSheetController {

  static final Parameter<OutcomeSheet.Pieces> PIECES =
      Parameter.constant("pieces", OutcomeSheet.Pieces.class, OutcomeSheet.Pieces::word);

  private static final int DIGITS = 7;

  private static final Parameter<?>[] KNOWN =
      Stream.concat(
              Stream.of(SheetQuery.PAPER, SheetQuery.ORIENTATION, SheetQuery.PAGE, PIECES),
              LabelOdds.parameters().stream())
          .toArray(Parameter<?>[]::new);

  private final LayoutStore layouts;
  private final LabelOdds odds;
  private final ComputedAnswers answers;

  OutcomeSheetController(LayoutStore layouts, LabelOdds odds, ComputedAnswers answers) {
    this.layouts = layouts;
    this.odds = odds;
    this.answers = answers;
  }

  @GetMapping("/v1/layouts/{layoutId}/outcome-sheet")
  ResponseEntity<byte[]> getLayoutOutcomeSheet(
      @PathVariable String layoutId, HttpServletRequest request) {
    return answers.reply(request, asked(layoutId, Asking.of(request)));
  }

  /** What is asked for, without HTTP. */
  Answerable asked(String layoutId, Asking request) {
    LayoutQuery asked = LayoutQuery.read(request, layouts, layoutId, KNOWN);
    QueryParameters query = asked.parameters();
    LayoutDocument layout = asked.layout();
    Representation form = Negotiation.choose(request, query, SheetReply.OFFERED);
    Words words = Words.of("sheet", Negotiation.language(request, query));
    if (!LabelOdds.asked(query)) {
      layouts.save(layout);
      return Answerable.atOnce(
          query,
          layout.subject(),
          () -> reply(form, plan(layout, Optional.empty(), Optional.empty(), words), query, words));
    }
    return odds.asked(
        query,
        layout,
        chances ->
            reply(
                form,
                plan(layout, Optional.of(chances), Optional.of(hand(layout, query, words)), words),
                query,
                words));
  }

  private static Reply reply(
      Representation form, OutcomePlan plan, QueryParameters query, Words words) {
    Paper.Format format =
        query.get(SheetQuery.PAPER).lying(SheetQuery.landscape(query).orElse(false));
    return OutcomeSheet.of(plan, format, query.find(PIECES), words)
        .map(sheet -> SheetReply.of(form, sheet, query, "outcome-sheet", words.locale()))
        .orElseThrow(OutcomeSheetController::noWedges)
        .cache(CachePolicy.SHORT);
  }

  private static ProblemException noWedges() {
    return new ProblemException(
        ProblemCode.INVALID_REQUEST,
        "The labels do not fit into wedges on this paper.",
        List.of(
            new Fault(
                "?pieces",
                "has wedges only where the magnets stand about the middle, far enough apart for"
                    + " their labels, and fit the paper; take tags or larger paper")));
  }

  private static OutcomePlan plan(
      LayoutDocument layout,
      Optional<LabelOdds.Chances> chances,
      Optional<String> hand,
      Words words) {
    List<PlateMagnet> magnets = new PlateMap(layout).magnets();
    boolean labelled = magnets.stream().anyMatch(magnet -> !magnet.label().isEmpty());
    List<OutcomePlan.Place> places = new ArrayList<>();
    for (PlateMagnet magnet : magnets) {
      Optional<String> own = layout.labels().get(magnet.number() - 1);
      if (labelled && magnet.label().isEmpty()) {
        continue;
      }
      String label =
          labelled
              ? magnet.label()
              : words.text("outcome.number", Map.of("number", magnet.number()));
      places.add(
          new OutcomePlan.Place(
              magnet.number(),
              label,
              magnet.x(),
              magnet.y(),
              magnet.outline().reach(),
              chances.flatMap(all -> own.map(name -> shown(all.of(name))))));
    }
    return new OutcomePlan(
        layout.title().orElse(""),
        places,
        layout.model().equals("bench"),
        hand,
        SafetyNotes.of(layout, words.locale()).shortLines());
  }

  private static OutcomePlan.Chance shown(LabelOdds.Chance chance) {
    return new OutcomePlan.Chance(chance.chance(), chance.low(), chance.high());
  }

  private static String hand(LayoutDocument layout, QueryParameters query, Words words) {
    boolean bench = layout.model().equals("bench");
    String spread = words.number(query.get(HandByAddress.SPREAD), DIGITS);
    return words.text(
        "outcome.hand",
        Map.of(
            "x",
            words.number(query.get(HandByAddress.X), DIGITS),
            "y",
            words.number(query.get(HandByAddress.Y), DIGITS),
            "spread",
            bench ? words.text("outcome.size", Map.of("value", spread)) : spread,
            "kind",
            words.text("outcome.hand-kind." + query.get(HandByAddress.KIND))));
  }

  /** The words for how labels come. */
  static String[] pieces() {
    return Arrays.stream(OutcomeSheet.Pieces.values())
        .map(OutcomeSheet.Pieces::word)
        .toArray(String[]::new);
  }
}
