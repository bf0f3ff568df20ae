package lodeswing.web.sheet;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lodeswing.sheet.Paper;
import lodeswing.sheet.PlacingPlan;
import lodeswing.sheet.PlacingSheet;
import lodeswing.web.jobs.Answerable;
import lodeswing.web.jobs.ComputedAnswers;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.layout.LayoutQuery;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.limits.Limits;
import lodeswing.web.plate.PlateMap;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.representation.Asking;
import lodeswing.web.representation.CachePolicy;
import lodeswing.web.representation.Negotiation;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Representation;
import lodeswing.web.safety.SafetyNotes;
import lodeswing.web.trace.TraceShapes;
import lodeswing.words.Words;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** The sheet by which magnets are placed; made at each request, since nothing is computed. */
@RestController
final class TemplateController {

  private static final double MM = 1e-3;

  private static final Parameter<Double> X = place("x");
  private static final Parameter<Double> Y = place("y");

  private final LayoutStore layouts;
  private final ComputedAnswers answers;
  private final Limits limits;

  TemplateController(LayoutStore layouts, ComputedAnswers answers, Limits limits) {
    this.layouts = layouts;
    this.answers = answers;
    this.limits = limits;
  }

  private static Parameter<Double> place(String name) {
    return Parameter.number(name, TraceShapes.PLACE.least(), TraceShapes.PLACE.most());
  }

  @GetMapping("/v1/layouts/{layoutId}/template")
  ResponseEntity<byte[]> getLayoutTemplate(
      @PathVariable String layoutId, HttpServletRequest request) {
    return answers.reply(request, asked(layoutId, Asking.of(request)));
  }

  /** What is asked for, without HTTP. */
  Answerable asked(String layoutId, Asking request) {
    LayoutQuery asked =
        LayoutQuery.read(
            request,
            layouts,
            layoutId,
            SheetQuery.PAPER,
            SheetQuery.ORIENTATION,
            SheetQuery.PAGE,
            X,
            Y);
    QueryParameters query = asked.parameters();
    Representation form = Negotiation.choose(request, query, SheetReply.OFFERED);
    LayoutDocument layout = asked.layout();
    if (!layout.model().equals("bench")) {
      throw new ProblemException(
          ProblemCode.NOT_IN_THIS_MODEL,
          "A textbook layout has no millimetres, so no sheet has its true scale.",
          List.of());
    }
    Locale locale = Negotiation.language(request, query);
    Words words = Words.of("sheet", locale);
    PlacingPlan plan = plan(layout, release(query), words);
    Paper paper = query.get(SheetQuery.PAPER);
    Optional<Boolean> landscape = SheetQuery.landscape(query);
    checkSize(plan, paper, landscape);
    layouts.save(layout);
    return Answerable.atOnce(
        query,
        layout.subject(),
        () ->
            SheetReply.of(
                    form,
                    PlacingSheet.of(plan, paper, landscape, words),
                    query,
                    "placing-sheet",
                    words.locale())
                .cache(CachePolicy.SHORT));
  }

  private static PlacingPlan plan(
      LayoutDocument layout, Optional<PlacingPlan.Spot> release, Words words) {
    var parts = new PartWords(layout, words);
    return new PlacingPlan(
        layout.title().orElse(""),
        new PlateMap(layout).outline(),
        parts.magnets(),
        release,
        parts.table(),
        SafetyNotes.of(layout, words.locale()).shortLines());
  }

  private static Optional<PlacingPlan.Spot> release(QueryParameters query) {
    Optional<Double> x = query.find(X);
    Optional<Double> y = query.find(Y);
    if (x.isPresent() != y.isPresent()) {
      throw new ProblemException(
          ProblemCode.INVALID_REQUEST,
          "Half a place is no place.",
          List.of(
              new Fault(
                  x.isPresent() ? "?y" : "?x",
                  "is missing: give both coordinates of the release, or neither")));
    }
    return x.map(value -> new PlacingPlan.Spot(value * MM, y.orElseThrow() * MM));
  }

  private void checkSize(PlacingPlan plan, Paper paper, Optional<Boolean> landscape) {
    long pages = PlacingSheet.plates(plan, paper, landscape);
    if (pages <= limits.sheetPages()) {
      return;
    }
    String instead =
        Arrays.stream(Paper.values())
            .filter(other -> PlacingSheet.plates(plan, other, landscape) <= limits.sheetPages())
            .findFirst()
            .map(other -> "; " + other.word() + " would do")
            .orElse(", as every other is");
    throw new ProblemException(
        ProblemCode.TOO_COSTLY,
        "In true scale the plate takes "
            + pages
            + " pages of this paper; a sheet has "
            + limits.sheetPages()
            + " at most.",
        List.of(new Fault("?paper", "is too small for this plate" + instead)));
  }
}
