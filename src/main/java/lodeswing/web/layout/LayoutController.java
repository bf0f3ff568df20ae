package lodeswing.web.layout;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Map;
import lodeswing.core.landscape.Landscape;
import lodeswing.job.WorkCost;
import lodeswing.web.access.Caller;
import lodeswing.web.body.BodyReader;
import lodeswing.web.layout.SampleLayouts.Sample;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.representation.CachePolicy;
import lodeswing.web.representation.GeneralParameters;
import lodeswing.web.representation.Negotiation;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import lodeswing.web.representation.Subject;
import lodeswing.web.representation.TableDialect;
import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** Stores layouts, gives them back, and changes them. */
@RestController
final class LayoutController {

  private static final List<Representation> DOCUMENT =
      List.of(Representation.JSON, Representation.CBOR);
  static final List<Representation> SAMPLES =
      List.of(Representation.JSON, Representation.CSV, Representation.CBOR, Representation.TEXT);
  private static final List<Representation> ID =
      List.of(Representation.JSON, Representation.CBOR, Representation.TEXT);

  static final List<Representation> OWN =
      List.of(Representation.JSON, Representation.CBOR, Representation.TEXT);

  private final LayoutStore layouts;

  LayoutController(LayoutStore layouts) {
    this.layouts = layouts;
  }

  @PostMapping(path = "/v1/layouts", consumes = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<byte[]> createLayout(
      @RequestBody(required = false) byte[] body, HttpServletRequest request) {
    QueryParameters query = QueryParameters.read(request, GeneralParameters.DRY_RUN);
    Representation form = Negotiation.choose(request, query, DOCUMENT);
    LayoutDocument document =
        layouts.read(BodyReader.read(body == null ? new byte[0] : body, LayoutShapes.REQUEST));
    Map<String, Object> answer = LayoutAnswers.summaryOf(document);
    if (query.get(GeneralParameters.DRY_RUN)) {
      answer.put("dryRun", true);
      double work = Math.rint(Landscape.expectedWork(document.layout()));
      answer.put("preparingWork", work);
      answer.put(
          "costReleases", (double) new WorkCost(document.layout(), false, work).restPoints());
      return Reply.ofJson(form, LayoutAnswers.json(answer))
          .to(request, document.itself().unstored());
    }
    boolean created = layouts.save(document);
    return Reply.ofJson(form, LayoutAnswers.json(answer))
        .status(created ? 201 : 200)
        .location("/v1/layouts/" + document.layoutId())
        .to(request, document.itself());
  }

  @GetMapping("/v1/layouts/{layoutId}")
  ResponseEntity<byte[]> getLayout(@PathVariable String layoutId, HttpServletRequest request) {
    QueryParameters query = QueryParameters.read(request);
    Representation form = Negotiation.choose(request, query, DOCUMENT);
    LayoutDocument document = layouts.get(layoutId);
    return Reply.ofJson(form, LayoutAnswers.json(LayoutAnswers.fullOf(document)))
        .cache(CachePolicy.SHORT)
        .to(request, document.itself());
  }

  @DeleteMapping("/v1/layouts/{layoutId}")
  ResponseEntity<byte[]> deleteLayout(@PathVariable String layoutId, HttpServletRequest request) {
    QueryParameters.read(request);
    layouts.delete(layoutId);
    return ResponseEntity.noContent().cacheControl(CacheControl.noStore()).build();
  }

  @GetMapping("/v1/private-layouts")
  ResponseEntity<byte[]> listPrivateLayouts(HttpServletRequest request) {
    QueryParameters query = QueryParameters.read(request);
    Representation form = Negotiation.choose(request, query, OWN);
    String owner =
        Caller.of(request)
            .owner()
            .orElseThrow(
                () ->
                    new ProblemException(
                        ProblemCode.OWNER_NEEDED,
                        "Private layouts are listed to their owner, and this request tells none.",
                        List.of()));
    List<LayoutDocument> own = layouts.ownedBy(owner);
    Reply reply =
        form == Representation.TEXT
            ? Reply.ofLines(own.stream().map(LayoutDocument::layoutId).toList())
            : Reply.ofJson(form, LayoutAnswers.json(LayoutAnswers.ownOf(own)));
    return reply.to(request, Subject.NONE);
  }

  @GetMapping("/v1/layouts/{layoutId}/variant")
  ResponseEntity<byte[]> getLayoutVariant(
      @PathVariable String layoutId, HttpServletRequest request) {
    LayoutQuery query = LayoutQuery.read(request, layouts, layoutId);
    Representation form = Negotiation.choose(request, query.parameters(), ID);
    layouts.save(query.layout());
    return idOrSummary(form, query.layout(), request);
  }

  @GetMapping("/v1/sample-layouts")
  ResponseEntity<byte[]> listSampleLayouts(HttpServletRequest request) {
    QueryParameters query = QueryParameters.read(request);
    Representation form = Negotiation.choose(request, query, SAMPLES);
    SampleLayouts samples = layouts.samples();
    Reply reply =
        switch (form) {
          case CSV -> Reply.of(form, LayoutAnswers.samplesCsv(samples, TableDialect.of(query)));
          case TEXT -> Reply.ofLines(samples.all().stream().map(Sample::name).toList());
          default -> Reply.ofJson(form, LayoutAnswers.json(LayoutAnswers.samplesOf(samples)));
        };
    return reply.cache(CachePolicy.SHORT).to(request, Subject.NONE);
  }

  @GetMapping("/v1/sample-layouts/{name}")
  ResponseEntity<byte[]> getSampleLayout(@PathVariable String name, HttpServletRequest request) {
    QueryParameters query = QueryParameters.read(request);
    Representation form = Negotiation.choose(request, query, ID);
    return idOrSummary(form, layouts.samples().get(name).document(), request);
  }

  private static ResponseEntity<byte[]> idOrSummary(
      Representation form, LayoutDocument document, HttpServletRequest request) {
    Reply reply =
        form == Representation.TEXT
            ? Reply.ofWords(document.layoutId())
            : Reply.ofJson(form, LayoutAnswers.json(LayoutAnswers.summaryOf(document)));
    return reply.cache(CachePolicy.SHORT).to(request, document.itself());
  }
}
