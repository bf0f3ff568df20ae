package lodeswing.web.plate;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import lodeswing.figure.Drawing;
import lodeswing.figure.Measure;
import lodeswing.figure.PathFigure;
import lodeswing.figure.PathPicture;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.layout.LayoutQuery;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.representation.CachePolicy;
import lodeswing.web.representation.DrawnReply;
import lodeswing.web.representation.Negotiation;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Representation;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** Draws a layout's plate; made at each request, since it takes milliseconds. */
@RestController
final class PlateController {

  static final List<Representation> OFFERED = List.of(Representation.SVG, Representation.PNG);
  static final int USUAL_WIDTH = 600;

  private static final Parameter<Integer> WIDTH = DrawnReply.pixels(USUAL_WIDTH);

  private final LayoutStore layouts;

  PlateController(LayoutStore layouts) {
    this.layouts = layouts;
  }

  @GetMapping("/v1/layouts/{layoutId}/plate")
  ResponseEntity<byte[]> getLayoutPlate(@PathVariable String layoutId, HttpServletRequest request) {
    LayoutQuery asked = LayoutQuery.read(request, layouts, layoutId, WIDTH);
    QueryParameters query = asked.parameters();
    Representation form = Negotiation.choose(request, query, OFFERED);
    layouts.save(asked.layout());
    return DrawnReply.of(form, drawing(asked.layout()), query.get(WIDTH))
        .cache(CachePolicy.SHORT)
        .to(request, asked.layout().subject());
  }

  private static Drawing drawing(LayoutDocument layout) {
    PlateMap plate = new PlateMap(layout);
    boolean bench = layout.model().equals("bench");
    return PathFigure.draw(
        new PathPicture(
            layout.title().orElse("The plate and its magnets"),
            List.of(),
            bench ? Measure.BENCH : Measure.TEXTBOOK,
            plate.outline(),
            plate.magnets(),
            List.of()));
  }
}
