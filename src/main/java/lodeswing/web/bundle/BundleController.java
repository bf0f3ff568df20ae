package lodeswing.web.bundle;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lodeswing.web.body.NearestName;
import lodeswing.web.body.NumberShape;
import lodeswing.web.jobs.ComputedAnswers;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.layout.LayoutQuery;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.limits.Limits;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.representation.CachePolicy;
import lodeswing.web.representation.GeneralParameters;
import lodeswing.web.representation.Negotiation;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import lodeswing.web.sheet.SheetQuery;
import lodeswing.web.trace.TraceShapes;
import lodeswing.web.worksheet.SurePlace;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** All of a layout in one file; its figures may be changed on the way. */
@RestController
final class BundleController {

  static final List<Representation> OFFERED = List.of(Representation.ZIP);

  static final NumberShape AGE = NumberShape.count(6, 19);
  static final NumberShape SPREAD = NumberShape.between(1e-6, 50);
  static final NumberShape MAP = NumberShape.count(16, 2_048);
  static final int USUAL_MAP = 256;

  private static final double USUAL_SPREAD = 3;
  private static final double USUAL_PLANE_SPREAD = 0.05;
  private static final int LONGEST = 200;

  private static final Parameter<Double> X =
      Parameter.number("x", TraceShapes.PLACE.least(), TraceShapes.PLACE.most());
  private static final Parameter<Double> Y =
      Parameter.number("y", TraceShapes.PLACE.least(), TraceShapes.PLACE.most());
  private static final Parameter<Integer> AGE_FROM =
      Parameter.integer("age", (int) AGE.least(), (int) AGE.most());
  private static final Parameter<Double> HAND =
      Parameter.number("spreadMm", SPREAD.least(), SPREAD.most());
  private static final Parameter<Integer> MAP_PIXELS =
      Parameter.integer("mapPixels", (int) MAP.least(), (int) MAP.most()).orElse(USUAL_MAP);
  private static final Parameter<String> WITHOUT = Parameter.text("without", LONGEST);

  private final LayoutStore layouts;
  private final BundleComputations computations;
  private final BundleWriter writer;
  private final ComputedAnswers answers;
  private final Limits limits;

  BundleController(
      LayoutStore layouts,
      BundleComputations computations,
      BundleWriter writer,
      ComputedAnswers answers,
      Limits limits) {
    this.layouts = layouts;
    this.computations = computations;
    this.writer = writer;
    this.answers = answers;
    this.limits = limits;
  }

  @GetMapping("/v1/layouts/{layoutId}/bundle")
  ResponseEntity<byte[]> getLayoutBundle(
      @PathVariable String layoutId, HttpServletRequest request) {
    LayoutQuery asked =
        LayoutQuery.read(
            request,
            layouts,
            layoutId,
            X,
            Y,
            AGE_FROM,
            HAND,
            MAP_PIXELS,
            WITHOUT,
            SheetQuery.PAPER);
    QueryParameters query = asked.parameters();
    Representation form = Negotiation.choose(request, query, OFFERED);
    LayoutDocument layout = asked.layout();
    var bundle =
        new BundleRequest(
            layout,
            release(query),
            query.find(HAND).orElse(usualSpread(layout)),
            mapPixels(query),
            without(query));
    var style =
        new BundleStyle(
            Negotiation.language(request, query),
            query.get(SheetQuery.PAPER),
            query.find(AGE_FROM),
            query.get(GeneralParameters.DECIMAL).equals("comma"),
            query.get(GeneralParameters.BOM));
    layouts.save(layout);
    return answers.reply(
        request,
        query,
        layout.subject(),
        computations.of(bundle),
        result ->
            Reply.of(form, writer.write(bundle, style, result.bytes()))
                .fileName("bundle-" + layout.layoutId() + ".zip")
                .language(style.locale())
                .cache(CachePolicy.SHORT));
  }

  private static double usualSpread(LayoutDocument layout) {
    return layout.model().equals("bench") ? USUAL_SPREAD : USUAL_PLANE_SPREAD;
  }

  private int mapPixels(QueryParameters query) {
    int side = query.get(MAP_PIXELS);
    if ((long) side * side > limits.previewPixels()) {
      throw new ProblemException(
          ProblemCode.TOO_COSTLY,
          "The map has more pixels than " + limits.previewPixels() + ".",
          List.of(
              new Fault(
                  "?mapPixels",
                  "is " + side + "; lower it to " + (int) Math.sqrt(limits.previewPixels()))));
    }
    return side;
  }

  private static Optional<SurePlace> release(QueryParameters query) {
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
    return x.map(value -> new SurePlace(value, y.orElseThrow()));
  }

  private static Set<BundleGroup> without(QueryParameters query) {
    Set<BundleGroup> without = EnumSet.noneOf(BundleGroup.class);
    List<Fault> faults = new ArrayList<>();
    for (String word : query.find(WITHOUT).map(list -> list.split(",", -1)).orElse(new String[0])) {
      BundleGroup.of(word.strip())
          .ifPresentOrElse(without::add, () -> faults.add(new Fault("?without", unknown(word))));
    }
    if (!faults.isEmpty()) {
      throw new ProblemException(
          ProblemCode.INVALID_REQUEST, "What is to be left out cannot be read.", faults);
    }
    return without;
  }

  private static String unknown(String word) {
    List<String> known = Arrays.stream(BundleGroup.values()).map(BundleGroup::word).toList();
    return NearestName.find(word, known)
        .map(near -> "names " + word + "; did you mean " + near + "?")
        .orElse("must be a list of " + String.join(", ", known));
  }
}
