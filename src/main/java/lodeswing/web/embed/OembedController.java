package lodeswing.web.embed;

import jakarta.servlet.http.HttpServletRequest;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.representation.Asking;
import lodeswing.web.representation.CachePolicy;
import lodeswing.web.representation.GeneralParameters;
import lodeswing.web.representation.OpenQuery;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import lodeswing.words.Language;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;

/** Tells platforms how to embed a page of ours (oEmbed 1.0, oembed.com). */
@RestController
final class OembedController {

  static final List<Representation> OFFERED = List.of(Representation.JSON, Representation.XML);

  private static final int LONGEST_URL = 2_000;

  static final Parameter<String> URL = Parameter.text("url", LONGEST_URL).required();
  static final Parameter<Integer> MAX_WIDTH = Parameter.integer("maxwidth", 1, 100_000);
  static final Parameter<Integer> MAX_HEIGHT = Parameter.integer("maxheight", 1, 100_000);

  /** Read here and not with Accept: the standard answers what it does not know by 501. */
  private static final Parameter<String> FORMAT = Parameter.of("format", "a word", Optional::of);

  private static final Pattern PAGE =
      Pattern.compile("/embed/(lay-[a-z2-7]{1,60})(?:/frame)?(?:\\?([^#]*))?(?:#.*)?");

  private final LayoutStore layouts;
  private final ServiceAddress address;

  OembedController(LayoutStore layouts, ServiceAddress address) {
    this.layouts = layouts;
    this.address = address;
  }

  @GetMapping("/oembed")
  ResponseEntity<byte[]> getOembed(HttpServletRequest request) {
    // Platforms add parameters of their own, which mean nothing here.
    QueryParameters query =
        OpenQuery.read(Asking.of(request), URL, MAX_WIDTH, MAX_HEIGHT, FORMAT).closed();
    Representation form = form(query.find(FORMAT).orElse(Representation.JSON.word()));
    String origin = address.of(request);
    EmbeddedFigure figure = figure(query.get(URL), origin);
    var answer =
        new Oembed(
            figure,
            origin,
            Math.min(Oembed.WIDTH, query.find(MAX_WIDTH).orElse(Oembed.WIDTH)),
            Math.min(Oembed.HEIGHT, query.find(MAX_HEIGHT).orElse(Oembed.HEIGHT)));
    return Reply.of(form, form == Representation.XML ? answer.xml() : answer.json())
        .language(figure.locale())
        .cache(CachePolicy.REVALIDATE)
        .to(request, figure.layout().subject());
  }

  private static Representation form(String word) {
    return OFFERED.stream()
        .filter(offered -> offered.word().equals(word))
        .findFirst()
        .orElseThrow(
            () ->
                new ProblemException(
                    ProblemCode.FORM_NOT_WRITTEN, "Written here: json, xml.", List.of()));
  }

  private EmbeddedFigure figure(String url, String origin) {
    boolean ours = ServiceAddress.origin(url).filter(origin::equals).isPresent();
    int path = url.indexOf('/', url.indexOf("//") + 2);
    Matcher page = PAGE.matcher(path < 0 ? "" : url.substring(path));
    if (!ours || !page.matches()) {
      throw new ProblemException(
          ProblemCode.NOT_FOUND,
          "Only pages " + origin + "/embed/{layoutId} of this service can be embedded.",
          List.of(new Fault("?url", "names another page")));
    }
    LayoutDocument layout = layouts.get(page.group(1));
    Map<String, String> query = query(Optional.ofNullable(page.group(2)).orElse(""));
    ShownReleases releases =
        ShownReleases.of(
            figure -> Optional.ofNullable(query.get(figure.name())).flatMap(figure::read));
    Optional<String> language =
        Optional.ofNullable(query.get(GeneralParameters.LANG.name()))
            .flatMap(GeneralParameters.LANG::read);
    return new EmbeddedFigure(
        layout,
        releases,
        language,
        language.map(Language::named).orElse(Language.ENGLISH.locale()));
  }

  /** The page's query; what the page does not know is left out. */
  private static Map<String, String> query(String raw) {
    Map<String, String> query = new LinkedHashMap<>();
    for (String pair : raw.split("&", -1)) {
      int equals = pair.indexOf('=');
      if (equals > 0) {
        query.put(pair.substring(0, equals), decoded(pair.substring(equals + 1)));
      }
    }
    return query;
  }

  private static String decoded(String value) {
    try {
      return URLDecoder.decode(value, StandardCharsets.UTF_8);
    } catch (IllegalArgumentException e) {
      return "";
    }
  }
}
