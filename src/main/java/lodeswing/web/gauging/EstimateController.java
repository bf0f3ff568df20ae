package lodeswing.web.gauging;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.stream.Stream;
import lodeswing.web.representation.CachePolicy;
import lodeswing.web.representation.Negotiation;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Representation;
import lodeswing.web.representation.Subject;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;

/** A magnet's remanence from readings; made at each request, since it takes milliseconds. */
@RestController
final class EstimateController {

  static final List<Representation> OFFERED =
      List.of(Representation.JSON, Representation.CSV, Representation.CBOR, Representation.TEXT);

  static final Parameter<EstimateValue> VALUE =
      Parameter.constant("value", EstimateValue.class, EstimateValue::word);

  private static final Parameter<?>[] KNOWN =
      Stream.concat(EstimateQuery.parameters().stream(), Stream.of(VALUE))
          .toArray(Parameter<?>[]::new);

  @GetMapping("/v1/magnet-estimates")
  ResponseEntity<byte[]> getMagnetEstimate(HttpServletRequest request) {
    QueryParameters query = QueryParameters.read(request, KNOWN);
    Representation form = Negotiation.chooseForCell(request, query, OFFERED, VALUE);
    return EstimateAnswers.of(EstimateQuery.of(query))
        .in(form, query)
        .cache(CachePolicy.SHORT)
        .to(request, Subject.NONE);
  }
}
