package lodeswing.web.worksheet;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lodeswing.core.chance.EndCounts;
import lodeswing.sheet.Paper;
import lodeswing.sheet.Worksheet;
import lodeswing.sheet.WorksheetActivity;
import lodeswing.sheet.WorksheetFacts;
import lodeswing.web.basin.UsualWindow;
import lodeswing.web.body.Body;
import lodeswing.web.body.NearestName;
import lodeswing.web.body.NumberShape;
import lodeswing.web.jobs.Answerable;
import lodeswing.web.jobs.ComputedAnswers;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.landscape.PreparingCost;
import lodeswing.web.layout.LayoutQuery;
import lodeswing.web.layout.LayoutStore;
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
import lodeswing.web.sheet.SheetQuery;
import lodeswing.web.sheet.SheetReply;
import lodeswing.words.Words;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** Activities for a class at one rig; a layout's figures may be changed on the way. */
@RestController
final class WorksheetController {

  static final NumberShape AGE = NumberShape.count(6, 19);
  static final NumberShape SPREAD = NumberShape.between(0.1, 50);
  static final int USUAL_AGE = 12;
  static final double USUAL_SPREAD = 3;

  private static final int LONGEST = 200;
  private static final double MILLI = 1e-3;

  private static final Parameter<Integer> AGE_FROM =
      Parameter.integer("age", (int) AGE.least(), (int) AGE.most());
  private static final Parameter<String> ACTIVITIES = Parameter.text("activities", LONGEST);
  private static final Parameter<Boolean> ANSWERS = Parameter.flag("answers").orElse(false);
  private static final Parameter<Double> HAND =
      Parameter.number("spreadMm", SPREAD.least(), SPREAD.most()).orElse(USUAL_SPREAD);

  private final LayoutStore layouts;
  private final WorksheetComputations computations;
  private final PreparingCost cost;
  private final ComputedAnswers answers;

  WorksheetController(
      LayoutStore layouts,
      WorksheetComputations computations,
      PreparingCost cost,
      ComputedAnswers answers) {
    this.layouts = layouts;
    this.computations = computations;
    this.cost = cost;
    this.answers = answers;
  }

  @GetMapping("/v1/layouts/{layoutId}/worksheet")
  ResponseEntity<byte[]> getLayoutWorksheet(
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
            AGE_FROM,
            ACTIVITIES,
            ANSWERS,
            HAND,
            SheetQuery.PAPER,
            SheetQuery.PAGE);
    QueryParameters query = asked.parameters();
    Representation form = Negotiation.choose(request, query, SheetReply.OFFERED);
    if (!asked.layout().model().equals("bench")) {
      throw new ProblemException(
          ProblemCode.NOT_IN_THIS_MODEL,
          "A textbook layout is on no bench, so nobody can work at it.",
          List.of());
    }
    var sheet = new WorksheetRequest(asked.layout(), query.get(HAND));
    int age = query.find(AGE_FROM).orElse(youngest(asked.layout().canonical()));
    List<WorksheetActivity> activities = activities(query, age, sheet.magnets());
    Words words = Words.of("worksheet", Negotiation.language(request, query));
    if (!sheet.magnets()) {
      double reach = UsualWindow.halfWidth(asked.layout()) * MILLI;
      var none =
          new StoredFigures(List.of(), reach, List.of(), List.of(), EndCounts.NONE, List.of());
      return Answerable.atOnce(
          query,
          asked.layout().subject(),
          () -> reply(form, query, facts(sheet, none, words), activities, age, words));
    }
    cost.check(asked.layout(), LayoutPlace.ADDRESS);
    layouts.save(asked.layout());
    return Answerable.of(
        query,
        asked.layout().subject(),
        computations.of(sheet, LayoutPlace.ADDRESS),
        result ->
            reply(
                form,
                query,
                facts(sheet, StoredFigures.read(result.bytes()), words),
                activities,
                age,
                words));
  }

  private static WorksheetFacts facts(WorksheetRequest sheet, StoredFigures figures, Words words) {
    return new FigureWords(sheet, words)
        .facts(figures, SafetyNotes.of(sheet.layout(), words.locale()).shortLines());
  }

  private static Reply reply(
      Representation form,
      QueryParameters query,
      WorksheetFacts facts,
      List<WorksheetActivity> activities,
      int age,
      Words words) {
    Paper paper = query.get(SheetQuery.PAPER);
    return SheetReply.of(
            form,
            Worksheet.of(facts, activities, age, query.get(ANSWERS), paper, words),
            query,
            "worksheet",
            words.locale())
        .cache(CachePolicy.SHORT);
  }

  /** The age that the layout is for, or a usual one. */
  private static int youngest(Body layout) {
    return layout
        .findObject("audience")
        .map(audience -> audience.findNumber("ageFrom"))
        .filter(age -> age.isPresent())
        .map(age -> (int) Math.min(AGE.most(), Math.max(AGE.least(), age.getAsDouble())))
        .orElse(USUAL_AGE);
  }

  private static List<WorksheetActivity> activities(
      QueryParameters query, int age, boolean magnets) {
    Optional<String> named = query.find(ACTIVITIES);
    if (named.isEmpty()) {
      return WorksheetActivity.from(age, magnets);
    }
    List<String> known =
        Arrays.stream(WorksheetActivity.values()).map(WorksheetActivity::word).toList();
    Set<WorksheetActivity> chosen = EnumSet.noneOf(WorksheetActivity.class);
    List<Fault> faults = new ArrayList<>();
    for (String word : named.get().split(",", -1)) {
      Optional<WorksheetActivity> one =
          Arrays.stream(WorksheetActivity.values())
              .filter(activity -> activity.word().equals(word.strip()))
              .findFirst();
      if (one.isEmpty()) {
        faults.add(
            new Fault(
                "?activities",
                NearestName.find(word, known)
                    .map(near -> "names " + word + "; did you mean " + near + "?")
                    .orElse("must be a list of " + String.join(", ", known))));
      } else if (one.get().amongMagnets() && !magnets) {
        faults.add(
            new Fault("?activities", word + " needs magnets on the plate and one on the bob"));
      } else {
        chosen.add(one.get());
      }
    }
    if (!faults.isEmpty()) {
      throw new ProblemException(
          ProblemCode.INVALID_REQUEST, "The activities cannot be set.", faults);
    }
    return List.copyOf(chosen);
  }
}
