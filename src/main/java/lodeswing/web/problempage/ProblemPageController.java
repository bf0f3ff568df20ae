package lodeswing.web.problempage;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Arrays;
import java.util.List;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.representation.CachePolicy;
import lodeswing.web.representation.HtmlDocument;
import lodeswing.web.representation.Negotiation;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import lodeswing.web.representation.Subject;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.databind.json.JsonMapper;

/** The pages that the type of a problem leads to. */
@RestController
final class ProblemPageController {

  private static final List<Representation> OFFERED =
      List.of(Representation.JSON, Representation.HTML);

  private final JsonMapper json;

  ProblemPageController(JsonMapper json) {
    this.json = json;
  }

  /**
   * All pages.
   *
   * @param problems one for each kind
   */
  record Pages(List<ProblemPage> problems) {}

  @GetMapping("/problems")
  ResponseEntity<byte[]> listProblems(HttpServletRequest request) {
    List<ProblemPage> pages = Arrays.stream(ProblemCode.values()).map(ProblemPage::of).toList();
    return reply(request, new Pages(pages), ProblemPage.htmlOfAll(pages));
  }

  @GetMapping("/problems/{code}")
  ResponseEntity<byte[]> getProblem(@PathVariable String code, HttpServletRequest request) {
    ProblemPage page =
        ProblemPage.of(
            ProblemCode.find(code)
                .orElseThrow(
                    () ->
                        new ProblemException(
                            ProblemCode.NOT_FOUND, "There is no such problem.", List.of())));
    return reply(request, page, page.html());
  }

  private ResponseEntity<byte[]> reply(HttpServletRequest request, Object document, byte[] html) {
    QueryParameters query = QueryParameters.read(request);
    Representation form = Negotiation.choose(request, query, OFFERED);
    Reply reply =
        form == Representation.HTML
            ? Reply.of(form, html).header("Content-Security-Policy", HtmlDocument.POLICY)
            : Reply.of(form, json.writeValueAsBytes(document));
    return reply.cache(CachePolicy.SHORT).to(request, Subject.NONE);
  }
}
