package lodeswing.web.freeswing;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lodeswing.analysis.freeswing.RatioDesign;
import lodeswing.analysis.freeswing.WholeRatio;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.layout.LayoutQuery;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.representation.CachePolicy;
import lodeswing.web.representation.Negotiation;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Representation;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** The suspension that gives a wanted figure; made at each request, since it takes microseconds. */
@RestController
final class DesignController {

  static final List<Representation> OFFERED =
      List.of(Representation.JSON, Representation.CSV, Representation.CBOR, Representation.TEXT);

  static final Parameter<DesignValue> VALUE =
      Parameter.constant("value", DesignValue.class, DesignValue::word);

  static final String[] KEEPS =
      Arrays.stream(RatioDesign.Keeps.values()).map(RatioDesign.Keeps::word).toArray(String[]::new);

  private static final Pattern RATIO = Pattern.compile("(\\d{1,2})\\s?[:/]\\s?(\\d{1,2})");
  private static final Parameter<WholeRatio> WANTED =
      Parameter.of(
              "ratio",
              "two whole numbers from 1 to "
                  + WholeRatio.MOST
                  + " such as 2:3, the swings along y and those along x in the same time",
              DesignController::ratio)
          .required();
  private static final Parameter<String> KEEP = Parameter.oneOf("keep", KEEPS);

  private final LayoutStore layouts;

  DesignController(LayoutStore layouts) {
    this.layouts = layouts;
  }

  private static Optional<WholeRatio> ratio(String text) {
    Matcher numbers = RATIO.matcher(text);
    if (!numbers.matches()) {
      return Optional.empty();
    }
    int y = Integer.parseInt(numbers.group(1));
    int x = Integer.parseInt(numbers.group(2));
    return Math.min(y, x) >= 1 && Math.max(y, x) <= WholeRatio.MOST
        ? Optional.of(WholeRatio.reduced(y, x))
        : Optional.empty();
  }

  @GetMapping("/v1/layouts/{layoutId}/free-swing/design")
  ResponseEntity<byte[]> getFreeSwingDesign(
      @PathVariable String layoutId, HttpServletRequest request) {
    LayoutQuery asked = LayoutQuery.read(request, layouts, layoutId, WANTED, KEEP, VALUE);
    QueryParameters query = asked.parameters();
    Representation form = Negotiation.chooseForCell(request, query, OFFERED, VALUE);
    LayoutDocument layout = asked.layout();
    WholeRatio ratio = query.get(WANTED);
    List<String> keep = query.find(KEEP).stream().toList();
    List<BuiltDesign> designs = BuiltDesign.of(layout, ratio, keep);
    layouts.save(layout);
    designs.forEach(design -> layouts.save(design.layout()));
    String self =
        "/v1/layouts/"
            + layout.layoutId()
            + "/free-swing/design?ratio="
            + ratio
            + (keep.isEmpty() ? "" : "&keep=" + keep.get(0));
    return new DesignAnswers(layout, ratio, designs, self)
        .in(form, query)
        .cache(CachePolicy.SHORT)
        .to(request, layout.subject());
  }
}
