package lodeswing.web.field;

import java.util.LinkedHashMap;
import java.util.Map;
import lodeswing.web.body.Body;
import lodeswing.web.body.Numbers;
import lodeswing.web.layout.LayoutDocument;

/** Units, vectors and the members that all answers about the field begin with. */
final class FieldUnits {

  private FieldUnits() {}

  /** The units of the answers. */
  static Body of(LayoutDocument layout) {
    Map<String, Object> units = new LinkedHashMap<>(layout.units());
    units.put("field", "mT");
    return Body.of(units);
  }

  /** A place or a vector. */
  static Body vector(double x, double y, double z) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("x", x);
    members.put("y", y);
    members.put("z", z);
    return Body.of(members);
  }

  /** The members with which an answer begins. */
  static Map<String, Object> head(FieldRequest request) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("layoutId", request.layout().layoutId());
    members.put("units", of(request.layout()));
    Map<String, Object> window = new LinkedHashMap<>();
    window.put("x", request.view().x());
    window.put("y", request.view().y());
    window.put("halfWidth", request.view().halfWidth());
    members.put("window", Body.of(window));
    Map<String, Object> surface = new LinkedHashMap<>();
    surface.put("kind", request.view().zMm().isPresent() ? "level" : "path");
    request.view().zMm().ifPresent(z -> surface.put("zMm", z));
    members.put("surface", Body.of(surface));
    return members;
  }

  /** The links with which an answer ends. */
  static Body links(FieldRequest request, boolean table) {
    String self = request.url();
    Map<String, Object> links = new LinkedHashMap<>();
    links.put("self", self);
    links.put("picture", self + "&format=svg");
    if (table) {
      links.put("csv", self + "&format=csv");
    }
    String view = "?" + request.view().query();
    links.put("map", request.base() + "/field/map" + view);
    links.put("lines", request.base() + "/field/lines" + view);
    links.put("filings", request.base() + "/field/filings" + view);
    links.put("weakSpots", request.base() + "/field/weak-spots" + view);
    links.put("layout", request.base());
    return Body.of(links);
  }

  /** A length of SI in millimetres, as answers show it. */
  static double length(double metres) {
    return Numbers.rounded(1e3 * metres);
  }

  /** A strength in millitesla, as answers show it. */
  static double strength(double tesla) {
    return Numbers.rounded(1e3 * tesla);
  }
}
