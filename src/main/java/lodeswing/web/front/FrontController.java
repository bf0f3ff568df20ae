package lodeswing.web.front;

import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import lodeswing.web.body.Body;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.representation.CachePolicy;
import lodeswing.web.representation.HtmlDocument;
import lodeswing.web.representation.Negotiation;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import lodeswing.web.representation.Subject;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;

/** The service's root, and the catalogue of its interfaces (RFC 9727). */
@RestController
final class FrontController {

  static final List<Representation> ROOT =
      List.of(Representation.JSON, Representation.CBOR, Representation.HTML);
  static final List<Representation> CATALOG = List.of(Representation.LINKSET);

  private final LayoutStore layouts;

  FrontController(LayoutStore layouts) {
    this.layouts = layouts;
  }

  @GetMapping("/")
  ResponseEntity<byte[]> getService(HttpServletRequest request) {
    QueryParameters query = QueryParameters.read(request);
    Representation form = Negotiation.choose(request, query, ROOT);
    Reply reply;
    if (form == Representation.HTML) {
      Locale locale = Negotiation.language(request, query);
      var page = new FrontPage(layouts.samples(), locale);
      reply =
          Reply.of(form, HtmlDocument.of(locale, page.title(), page.content()))
              .language(locale)
              .header("Content-Security-Policy", HtmlDocument.POLICY);
    } else {
      reply = Reply.ofJson(form, json(service()));
    }
    for (FrontLink link : FrontLink.values()) {
      reply = link.addedTo(reply);
    }
    return reply.cache(CachePolicy.SHORT).to(request, Subject.NONE);
  }

  @GetMapping("/.well-known/api-catalog")
  ResponseEntity<byte[]> getApiCatalog(HttpServletRequest request) {
    QueryParameters query = QueryParameters.read(request);
    Representation form = Negotiation.choose(request, query, CATALOG);
    return FrontLink.API_CATALOG
        .addedTo(Reply.of(form, json(catalog())))
        .cache(CachePolicy.SHORT)
        .to(request, Subject.NONE);
  }

  private static Map<String, Object> service() {
    Map<String, Object> links = new LinkedHashMap<>();
    for (FrontLink link : FrontLink.values()) {
      links.put(link.member(), link.url());
    }
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("name", "Lodeswing");
    members.put(
        "description",
        "Computes what a teacher needs who builds and shows bench-top chaos: a pendulum with a"
            + " magnet on its bob, swinging over magnets on a plate.");
    members.put("apiVersion", "1");
    members.put("links", Body.of(links));
    return members;
  }

  /** One interface, anchored at its base path; addresses are relative to the catalogue's own. */
  private static Map<String, Object> catalog() {
    Map<String, Object> context = new LinkedHashMap<>();
    context.put("anchor", "/v1");
    for (FrontLink link : FrontLink.values()) {
      link.target()
          .ifPresent(
              target -> {
                @SuppressWarnings("unchecked") // made in the line below, and nowhere else
                List<Body> targets =
                    (List<Body>)
                        context.computeIfAbsent(link.relation(), relation -> new ArrayList<Body>());
                targets.add(target);
              });
    }
    return Map.of("linkset", List.of(Body.of(context)));
  }

  private static byte[] json(Map<String, Object> members) {
    return Body.of(members).toJson().getBytes(StandardCharsets.UTF_8);
  }
}
