package lodeswing.web.sweep;

import jakarta.servlet.http.HttpServletRequest;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lodeswing.job.Computation;
import lodeswing.web.body.Body;
import lodeswing.web.body.BodyReader;
import lodeswing.web.jobs.ComputedAnswers;
import lodeswing.web.landscape.DryRun;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.limits.Limits;
import lodeswing.web.representation.CachePolicy;
import lodeswing.web.representation.KeptReplies;
import lodeswing.web.representation.Negotiation;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** Sweeps that are posted and then fetched. */
@RestController
final class SweepController {

  static final List<Representation> DOCUMENT =
      List.of(Representation.JSON, Representation.CSV, Representation.CBOR, Representation.TEXT);
  static final List<Representation> PICTURE = List.of(Representation.SVG, Representation.PNG);
  private static final Parameter<Boolean> DRY_RUN = Parameter.flag("dry-run").orElse(false);

  private final LayoutStore layouts;
  private final SweepStore sweeps;
  private final SweepComputations computations;
  private final DryRun dryRun;
  private final ComputedAnswers answers;
  private final Limits limits;
  private final KeptReplies kept;

  SweepController(
      LayoutStore layouts,
      SweepStore sweeps,
      SweepComputations computations,
      DryRun dryRun,
      ComputedAnswers answers,
      Limits limits,
      KeptReplies kept) {
    this.layouts = layouts;
    this.sweeps = sweeps;
    this.computations = computations;
    this.dryRun = dryRun;
    this.answers = answers;
    this.limits = limits;
    this.kept = kept;
  }

  @PostMapping(path = "/v1/sweeps", consumes = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<byte[]> createSweep(
      @RequestBody(required = false) byte[] body, HttpServletRequest request) {
    QueryParameters query =
        QueryParameters.read(
            request, DRY_RUN, SweepReplies.VALUE, SweepReplies.COLUMN, SweepReplies.ROW);
    Representation form = Negotiation.chooseForCell(request, query, DOCUMENT, SweepReplies.VALUE);
    Body sent = BodyReader.read(body == null ? new byte[0] : body, SweepShapes.REQUEST);
    LayoutDocument layout =
        sent.findObject("layout")
            .map(LayoutDocument::of)
            .orElseGet(() -> layouts.get(sent.text("layoutId")));
    var review = new SweepReview(layout, sent, LayoutPlace.WHOLE);
    SweepRequest asked = review.request(limits);
    Computation work = computations.of(asked);
    review.affordable(asked, work.releases(), limits);
    if (query.get(DRY_RUN)) {
      return Reply.ofJson(Representation.JSON, dryRun.of(layout, work, named(asked))).to(request);
    }
    sweeps.save(asked);
    return answers.reply(
        request,
        query,
        work,
        result -> SweepReplies.of(form, asked, result.bytes(), query).readAt(asked.url()));
  }

  private Map<String, Object> named(SweepRequest asked) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("sweepId", asked.sweepId());
    members.put("points", (double) asked.points());
    members.put("pieces", (double) asked.pieces());
    return members;
  }

  @GetMapping("/v1/sweeps/{sweepId}")
  ResponseEntity<byte[]> getSweep(@PathVariable String sweepId, HttpServletRequest request) {
    return answer(
        sweepId,
        "",
        request,
        DOCUMENT,
        QueryParameters.read(request, SweepReplies.VALUE, SweepReplies.COLUMN, SweepReplies.ROW));
  }

  @GetMapping("/v1/sweeps/{sweepId}/plot")
  ResponseEntity<byte[]> getSweepPlot(@PathVariable String sweepId, HttpServletRequest request) {
    return answer(
        sweepId,
        "/plot",
        request,
        PICTURE,
        QueryParameters.read(request, SweepReplies.PIXELS, SweepReplies.COLUMN));
  }

  private ResponseEntity<byte[]> answer(
      String sweepId,
      String part,
      HttpServletRequest request,
      List<Representation> offered,
      QueryParameters query) {
    Representation form =
        offered.contains(Representation.TEXT)
            ? Negotiation.chooseForCell(request, query, offered, SweepReplies.VALUE)
            : Negotiation.choose(request, query, offered);
    Optional<ResponseEntity<byte[]>> written = kept.find(request, query, form);
    if (written.isPresent()) {
      return written.get();
    }
    return answers.replyAsStored(
        request,
        query,
        sweeps.get(sweepId),
        asked -> List.of(computations.of(asked)),
        (asked, result) ->
            kept.keep(
                asked.url() + part,
                query,
                form,
                result,
                () ->
                    SweepReplies.of(form, asked, result.bytes(), query)
                        .cache(CachePolicy.IMMUTABLE)));
  }
}
