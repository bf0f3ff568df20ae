package lodeswing.web.basin;

import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lodeswing.web.body.Body;
import lodeswing.web.jobs.ComputedAnswers;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.landscape.PreparingCost;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.layout.LayoutOverrides;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.limits.Limits;
import lodeswing.web.representation.CachePolicy;
import lodeswing.web.representation.GeneralParameters;
import lodeswing.web.representation.Negotiation;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** Maps by one address, for spreadsheets; a layout's figures may be changed on the way. */
@RestController
final class LayoutBasinController {

  static final List<Representation> OFFERED =
      List.of(Representation.JSON, Representation.CBOR, Representation.TEXT, Representation.PNG);

  private static final Parameter<Double> X =
      Parameter.number("x", BasinShapes.PLACE.least(), BasinShapes.PLACE.most());
  private static final Parameter<Double> Y =
      Parameter.number("y", BasinShapes.PLACE.least(), BasinShapes.PLACE.most());
  private static final Parameter<Double> HALF_WIDTH =
      Parameter.number("halfWidth", Double.MIN_NORMAL, BasinShapes.HALF_WIDTH.most());

  private static final Parameter<?>[] KNOWN = {
    X, Y, HALF_WIDTH, BasinQuery.WIDTH, BasinQuery.HEIGHT, BasinQuery.PATTERNS
  };

  private final LayoutStore layouts;
  private final BasinStore basins;
  private final BasinComputations computations;
  private final BasinReplies replies;
  private final ComputedAnswers answers;
  private final PreparingCost cost;
  private final Limits limits;

  // Two more than usual: a map by address is stored, computed and drawn in one request.
  LayoutBasinController(
      LayoutStore layouts,
      BasinStore basins,
      BasinComputations computations,
      BasinReplies replies,
      ComputedAnswers answers,
      PreparingCost cost,
      Limits limits) {
    this.layouts = layouts;
    this.basins = basins;
    this.computations = computations;
    this.replies = replies;
    this.answers = answers;
    this.cost = cost;
    this.limits = limits;
  }

  @GetMapping("/v1/layouts/{layoutId}/basin")
  ResponseEntity<byte[]> getLayoutBasin(@PathVariable String layoutId, HttpServletRequest request) {
    QueryParameters query = QueryParameters.readOpen(request, name -> true, KNOWN);
    Representation form = Negotiation.choose(request, query, OFFERED);
    BasinRequest basin = basin(layoutId, query);
    BasinQuery.Size size = BasinQuery.Size.of(query, limits);
    basins.save(basin);
    if (form == Representation.PNG) {
      return answers.reply(
          request,
          query,
          computations.preview(basin, size.width(), size.height()),
          result ->
              replies.preview(form, basin, size, result.bytes(), query).cache(CachePolicy.SHORT));
    }
    return answers.reply(
        request,
        query,
        computations.survey(basin),
        result -> document(form, basin, result.bytes()).cache(CachePolicy.SHORT));
  }

  private static Reply document(Representation form, BasinRequest basin, byte[] survey) {
    return form == Representation.TEXT
        ? Reply.of(form, basin.basinId().getBytes(StandardCharsets.UTF_8))
        : Reply.ofJson(form, new BasinAnswers(basin, StoredSurvey.read(survey)).json());
  }

  private BasinRequest basin(String layoutId, QueryParameters query) {
    List<String> known = new ArrayList<>(GeneralParameters.names());
    for (Parameter<?> parameter : KNOWN) {
      known.add(parameter.name());
    }
    LayoutDocument layout = LayoutOverrides.apply(layouts.get(layoutId), query.others(), known);
    cost.check(layout, LayoutPlace.ADDRESS);
    Map<String, Object> window = new LinkedHashMap<>();
    window.put("x", query.find(X).orElse(0.0));
    window.put("y", query.find(Y).orElse(0.0));
    window.put("halfWidth", query.find(HALF_WIDTH).orElseGet(() -> UsualWindow.halfWidth(layout)));
    return BasinRequest.of(layout, Body.of(Map.of("window", Body.of(window)))).checked("?");
  }
}
