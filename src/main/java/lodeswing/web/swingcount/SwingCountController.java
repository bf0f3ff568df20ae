package lodeswing.web.swingcount;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.stream.Stream;
import lodeswing.core.rig.BenchLayout;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.layout.LayoutQuery;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.representation.CachePolicy;
import lodeswing.web.representation.Negotiation;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Representation;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** What counted swings tell; made at each request, since it takes milliseconds. */
@RestController
final class SwingCountController {

  static final List<Representation> OFFERED =
      List.of(Representation.JSON, Representation.CSV, Representation.CBOR, Representation.TEXT);

  static final Parameter<SwingCountValue> VALUE =
      Parameter.constant("value", SwingCountValue.class, SwingCountValue::word);

  private static final Parameter<?>[] KNOWN =
      Stream.concat(SwingCountQuery.parameters().stream(), Stream.of(VALUE))
          .toArray(Parameter<?>[]::new);

  private final LayoutStore layouts;

  SwingCountController(LayoutStore layouts) {
    this.layouts = layouts;
  }

  @GetMapping("/v1/layouts/{layoutId}/swing-count")
  ResponseEntity<byte[]> getSwingCount(@PathVariable String layoutId, HttpServletRequest request) {
    LayoutQuery asked = LayoutQuery.read(request, layouts, layoutId, KNOWN);
    QueryParameters query = asked.parameters();
    Representation form = Negotiation.chooseForCell(request, query, OFFERED, VALUE);
    LayoutDocument layout = asked.layout();
    if (!(layout.layout() instanceof BenchLayout rig)) {
      throw new ProblemException(
          ProblemCode.NOT_IN_THIS_MODEL,
          "A textbook layout has no length and no loss that a ruler and counted swings could tell.",
          List.of());
    }
    SwingCountAnswers answers =
        new SwingCountAnswers(layout, rig, SwingCountQuery.of(query, layout, rig));
    layouts.save(layout);
    answers.suggestion().ifPresent(suggestion -> layouts.save(suggestion.layout()));
    return answers.in(form, query).cache(CachePolicy.SHORT).to(request, layout.subject());
  }
}
