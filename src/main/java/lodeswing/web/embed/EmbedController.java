package lodeswing.web.embed;

import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Function;
import lodeswing.web.layout.LayoutQuery;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.representation.CachePolicy;
import lodeswing.web.representation.GeneralParameters;
import lodeswing.web.representation.Negotiation;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import lodeswing.web.representation.Subject;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** The figure's script, and the pages that hold a figure. */
@RestController
final class EmbedController {

  static final List<Representation> SCRIPT = List.of(Representation.SCRIPT);
  static final List<Representation> PAGE = List.of(Representation.HTML);

  private final LayoutStore layouts;
  private final ServiceAddress address;
  private final String policy;
  private final FigureScript.Versions scripts = FigureScript.versions();

  EmbedController(
      LayoutStore layouts,
      ServiceAddress address,
      @Value("${lodeswing.embed.frame-ancestors}") String ancestors) {
    this.layouts = layouts;
    this.address = address;
    this.policy = EmbedPage.policy(ancestors);
  }

  @GetMapping("/embed/{version}/lodeswing-figure.js")
  ResponseEntity<byte[]> getFigureScript(@PathVariable String version, HttpServletRequest request) {
    QueryParameters query = QueryParameters.read(request);
    Representation form = Negotiation.choose(request, query, SCRIPT);
    FigureScript script =
        scripts
            .find(version)
            .orElseThrow(
                () ->
                    new ProblemException(
                        ProblemCode.NOT_FOUND,
                        "Versions are counted from 1 to " + FigureScript.NEWEST + ".",
                        List.of()));
    return Reply.of(form, script.bytes())
        .cache(CachePolicy.IMMUTABLE)
        .header("Cross-Origin-Resource-Policy", "cross-origin")
        .to(request, Subject.NONE);
  }

  @GetMapping("/embed/{layoutId}")
  ResponseEntity<byte[]> getEmbedPage(@PathVariable String layoutId, HttpServletRequest request) {
    return page(layoutId, request, EmbedPage::whole);
  }

  @GetMapping("/embed/{layoutId}/frame")
  ResponseEntity<byte[]> getEmbedFrame(@PathVariable String layoutId, HttpServletRequest request) {
    return page(layoutId, request, EmbedPage::framed);
  }

  private ResponseEntity<byte[]> page(
      String layoutId, HttpServletRequest request, Function<EmbedPage, String> written) {
    LayoutQuery asked =
        LayoutQuery.read(
            request,
            layouts,
            layoutId,
            ShownReleases.X,
            ShownReleases.Y,
            ShownReleases.X2,
            ShownReleases.Y2);
    QueryParameters query = asked.parameters();
    Representation form = Negotiation.choose(request, query, PAGE);
    var figure =
        new EmbeddedFigure(
            asked.layout(),
            ShownReleases.of(query::find),
            query.find(GeneralParameters.LANG),
            Negotiation.language(request, query));
    layouts.save(asked.layout());
    var page = new EmbedPage(figure, scripts.newest(), address.of(request));
    return Reply.of(form, written.apply(page).getBytes(StandardCharsets.UTF_8))
        .language(figure.locale())
        .cache(CachePolicy.REVALIDATE)
        .header("Content-Security-Policy", policy)
        .alternate(page.oembed("json"), EmbedPage.OEMBED)
        .to(request, asked.layout().subject());
  }
}
