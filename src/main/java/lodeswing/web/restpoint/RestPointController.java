package lodeswing.web.restpoint;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import lodeswing.web.jobs.Answerable;
import lodeswing.web.jobs.ComputedAnswers;
import lodeswing.web.landscape.Landscapes;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.landscape.PreparingCost;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.layout.LayoutQuery;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.representation.Asking;
import lodeswing.web.representation.CachePolicy;
import lodeswing.web.representation.Negotiation;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import lodeswing.web.representation.TableDialect;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** Shows where a layout's bob can come to rest. */
@RestController
final class RestPointController {

  static final List<Representation> OFFERED =
      List.of(Representation.JSON, Representation.CSV, Representation.CBOR);

  private final LayoutStore layouts;
  private final Landscapes landscapes;
  private final PreparingCost cost;
  private final ComputedAnswers answers;

  RestPointController(
      LayoutStore layouts, Landscapes landscapes, PreparingCost cost, ComputedAnswers answers) {
    this.layouts = layouts;
    this.landscapes = landscapes;
    this.cost = cost;
    this.answers = answers;
  }

  @GetMapping("/v1/layouts/{layoutId}/rest-points")
  ResponseEntity<byte[]> listRestPoints(@PathVariable String layoutId, HttpServletRequest request) {
    return answers.reply(request, asked(layoutId, Asking.of(request)));
  }

  /** What is asked for, without HTTP. */
  Answerable asked(String layoutId, Asking request) {
    LayoutQuery asked = LayoutQuery.read(request, layouts, layoutId);
    QueryParameters query = asked.parameters();
    Representation form = Negotiation.choose(request, query, OFFERED);
    LayoutDocument document = asked.layout();
    cost.check(document, LayoutPlace.ADDRESS);
    layouts.save(document);
    return Answerable.of(
        query,
        document.subject(),
        RestPointComputation.of(document, landscapes, LayoutPlace.ADDRESS),
        result -> {
          var answer = new RestPointAnswers(document, result.bytes());
          Reply reply =
              form == Representation.CSV
                  ? Reply.of(form, answer.csv(TableDialect.of(query)))
                  : Reply.ofJson(form, answer.json());
          return reply.cache(CachePolicy.SHORT);
        });
  }
}
