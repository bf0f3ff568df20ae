package lodeswing.web.check;

import java.nio.charset.StandardCharsets;
import lodeswing.analysis.check.Change;
import lodeswing.analysis.check.CheckCode;
import lodeswing.analysis.check.CheckSpec;
import lodeswing.analysis.check.Finding;
import lodeswing.analysis.check.RigCheck;
import lodeswing.core.integrate.lane.LaneProvider;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.outcome.OutcomeFinders;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.layout.SampleLayouts;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Sample layouts with members changed by JSON Pointer, and single lines of their checks. */
final class Rigs {

  private static final SampleLayouts SAMPLES = SampleLayouts.load();
  private static final JsonMapper JSON = JsonMapper.shared();
  private static final OutcomeFinders FINDERS = new OutcomeFinders(LaneProvider.choose());

  private Rigs() {}

  /**
   * A sample with members changed.
   *
   * @param changes pointers and JSON values by turns; the value {@code -} takes a member away
   */
  static LayoutDocument sample(String name, String... changes) {
    return changed(SAMPLES.get(name).document(), changes);
  }

  static LayoutDocument changed(LayoutDocument document, String... changes) {
    ObjectNode tree = document.canonical().toTree();
    for (int i = 0; i < changes.length; i += 2) {
      set(tree, changes[i], changes[i + 1]);
    }
    return LayoutDocument.ofCanonical(tree.toString().getBytes(StandardCharsets.UTF_8));
  }

  private static void set(ObjectNode tree, String pointer, String value) {
    int last = pointer.lastIndexOf('/');
    JsonNode owner = last == 0 ? tree : tree.at(pointer.substring(0, last));
    String member = pointer.substring(last + 1);
    if (owner instanceof ArrayNode list) {
      if (value.equals("-")) {
        list.remove(Integer.parseInt(member));
      } else {
        list.set(Integer.parseInt(member), JSON.readTree(value));
      }
    } else if (value.equals("-")) {
      ((ObjectNode) owner).remove(member);
    } else {
      ((ObjectNode) owner).set(member, JSON.readTree(value));
    }
  }

  /** The layout with a change of a check made. */
  static LayoutDocument mended(LayoutDocument document, Change change) {
    return changed(document, change.pointer(), value(change));
  }

  private static String value(Change change) {
    return change instanceof Change.OfFigure figure
        ? Double.toString(figure.to())
        : "\"" + ((Change.OfWord) change).to() + "\"";
  }

  /** One line of a check, as the service makes it. */
  static Finding line(LayoutDocument document, CheckCode code) {
    return line(document, code, CheckRequest.usualRadius(document));
  }

  static Finding line(LayoutDocument document, CheckCode code, double radius) {
    double per = document.shownPerUnit();
    double spread = CheckRequest.usualSpread(document) / per;
    return new RigCheck(
            LayoutRig.of(document),
            new CheckSpec(radius / per, spread, 1, 600, 3e9),
            new LayoutWorkshop(document),
            () -> Landscape.of(document.layout()),
            FINDERS,
            part -> {})
        .line(code);
  }
}
