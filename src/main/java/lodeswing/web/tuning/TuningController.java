package lodeswing.web.tuning;

import jakarta.servlet.http.HttpServletRequest;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lodeswing.analysis.tuning.TuningSpec;
import lodeswing.core.chance.OddsSpec;
import lodeswing.job.Computation;
import lodeswing.web.body.Body;
import lodeswing.web.body.BodyReader;
import lodeswing.web.jobs.ComputedAnswers;
import lodeswing.web.landscape.DryRun;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.landscape.PreparingCost;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.limits.Limits;
import lodeswing.web.representation.CachePolicy;
import lodeswing.web.representation.GeneralParameters;
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

/** Tunings that are posted and then fetched. */
@RestController
final class TuningController {

  static final List<Representation> DOCUMENT =
      List.of(Representation.JSON, Representation.CSV, Representation.CBOR, Representation.TEXT);
  static final List<Representation> PICTURE = List.of(Representation.SVG, Representation.PNG);
  private static final Parameter<Boolean> DRY_RUN = Parameter.flag("dry-run").orElse(false);

  private final LayoutStore layouts;
  private final TuningStore tunings;
  private final TuningComputations computations;
  private final PreparingCost cost;
  private final DryRun dryRun;
  private final ComputedAnswers answers;
  private final Limits limits;
  private final KeptReplies kept;

  TuningController(
      LayoutStore layouts,
      TuningStore tunings,
      TuningComputations computations,
      PreparingCost cost,
      DryRun dryRun,
      ComputedAnswers answers,
      Limits limits,
      KeptReplies kept) {
    this.layouts = layouts;
    this.tunings = tunings;
    this.computations = computations;
    this.cost = cost;
    this.dryRun = dryRun;
    this.answers = answers;
    this.limits = limits;
    this.kept = kept;
  }

  @PostMapping(path = "/v1/tunings", consumes = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<byte[]> createTuning(
      @RequestBody(required = false) byte[] body, HttpServletRequest request) {
    QueryParameters query =
        QueryParameters.read(
            request, DRY_RUN, TuningReplies.VALUE, TuningReplies.LABEL, TuningReplies.TABLE);
    Representation form = form(request, query, DOCUMENT);
    Body sent = BodyReader.read(body == null ? new byte[0] : body, TuningShapes.REQUEST);
    LayoutDocument layout =
        sent.findObject("layout")
            .map(LayoutDocument::of)
            .orElseGet(() -> layouts.get(sent.text("layoutId")));
    LayoutPlace place = sent.has("layout") ? LayoutPlace.WHOLE : LayoutPlace.STORED;
    TuningRequest asked = TuningRequest.of(layout, sent);
    TuningReview review = new TuningReview(asked, place);
    review.check(sent);
    cost.check(layout, place);
    review.checkCost(computations, limits);
    Computation work = computations.of(asked, place);
    if (query.get(DRY_RUN)) {
      return Reply.ofJson(Representation.JSON, dryRun.of(layout, work, named(asked))).to(request);
    }
    tunings.save(asked);
    return answers.reply(
        request,
        query,
        work,
        result -> TuningReplies.of(form, asked, result.bytes(), query).readAt(asked.url()));
  }

  private Map<String, Object> named(TuningRequest asked) {
    TuningSpec spec = asked.spec(limits);
    long full = 2L * OddsSpec.mostReleases(asked.width(), asked.rule());
    long releases =
        (1L + asked.answers()) * full
            + (long) asked.candidates() * TuningSpec.GLANCE
            + (long) spec.looks() * TuningSpec.LOOK;
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("tuningId", asked.tuningId());
    members.put("candidates", (double) asked.candidates());
    members.put("releases", (double) releases);
    return members;
  }

  private static Representation form(
      HttpServletRequest request, QueryParameters query, List<Representation> offered) {
    return offered.contains(Representation.TEXT)
            && query.find(TuningReplies.VALUE).isPresent()
            && query.find(GeneralParameters.FORMAT).isEmpty()
        ? Representation.TEXT
        : Negotiation.choose(request, query, offered);
  }

  @GetMapping("/v1/tunings/{tuningId}")
  ResponseEntity<byte[]> getTuning(@PathVariable String tuningId, HttpServletRequest request) {
    return answer(
        tuningId,
        "",
        request,
        DOCUMENT,
        QueryParameters.read(
            request, TuningReplies.VALUE, TuningReplies.LABEL, TuningReplies.TABLE));
  }

  @GetMapping("/v1/tunings/{tuningId}/plate")
  ResponseEntity<byte[]> getTuningPlate(@PathVariable String tuningId, HttpServletRequest request) {
    return answer(
        tuningId,
        "/plate",
        request,
        PICTURE,
        QueryParameters.read(request, TuningReplies.PIXELS, TuningReplies.RANK));
  }

  private ResponseEntity<byte[]> answer(
      String tuningId,
      String part,
      HttpServletRequest request,
      List<Representation> offered,
      QueryParameters query) {
    Representation form = form(request, query, offered);
    Optional<ResponseEntity<byte[]>> written = kept.find(request, query, form);
    if (written.isPresent()) {
      return written.get();
    }
    return answers.replyAsStored(
        request,
        query,
        tunings.get(tuningId),
        asked -> List.of(computations.of(asked, LayoutPlace.STORED)),
        (asked, result) ->
            kept.keep(
                asked.url() + part,
                query,
                form,
                result,
                () ->
                    TuningReplies.of(form, asked, result.bytes(), query)
                        .cache(CachePolicy.IMMUTABLE)));
  }
}
