package lodeswing.web.check;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.analysis.check.Change;
import lodeswing.analysis.check.CheckedRig;
import lodeswing.analysis.check.Knob;
import lodeswing.analysis.check.Setting;
import lodeswing.analysis.check.Workshop;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.suspension.BarPart;
import lodeswing.core.suspension.HookedBar;
import lodeswing.web.body.Body;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.problem.ProblemException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * A layout whose members are changed one at a time, by the rules of every layout. Ranges and steps
 * are those of a hand: half a millimetre of a gap, a gram, five millimetres of a base.
 */
final class LayoutWorkshop implements Workshop {

  private static final double MOST_MM = 5000;
  private static final double TYPICAL_SPEED = 0.5;

  private final LayoutDocument document;
  private final Body canonical;

  LayoutWorkshop(LayoutDocument document) {
    this.document = document;
    this.canonical = document.canonical();
  }

  @Override
  public Optional<Setting> setting(Knob knob, int magnet) {
    boolean bench = document.model().equals("bench");
    if (!bench) {
      return switch (knob) {
        case LOSS -> of("/drag", digit(canonical.number("drag")), 0, 1000, 1);
        case PLANE_HEIGHT -> of("/height", 0.01, 0.001, 1000, 1);
        default -> Optional.empty();
      };
    }
    return switch (knob) {
      case GAP -> of("/gapMm", 0.5, -1000, MOST_MM, 1);
      case MASS -> mass();
      case BOB_HEIGHT -> bobHeight();
      case SPAN -> of("/pendulum/yokeSpanMm", 5, 5, MOST_MM, 1);
      case LOSS -> loss();
      case HOOK_DEPTH -> of("/hook/depthMm", 0.5, 0, MOST_MM, 1);
      case HOOK_RATED -> of("/hook/ratedLoadN", 1, 1, 100_000, 1);
      case FRICTION -> of("/plate/frictionCoefficient", 0.05, 0, 5, 1);
      case BASE -> of("/stand/baseMm", 5, 0, 20_000, 1);
      case TILT -> of("/stand/tiltDeg", 0.1, -45, 45, 1);
      case MAGNET_X -> of("/magnets/" + magnet + "/x", 0.5, -MOST_MM, MOST_MM, 1);
      case MAGNET_Y -> of("/magnets/" + magnet + "/y", 0.5, -MOST_MM, MOST_MM, 1);
      case LABEL, POLE, FIXING, PLANE_HEIGHT -> Optional.empty();
    };
  }

  private Optional<Setting> of(String pointer, double step, double least, double most, int sense) {
    OptionalDouble from = number(pointer);
    return from.isPresent()
        ? Optional.of(new Setting(pointer, from, step, least, most, sense))
        : Optional.empty();
  }

  /** The bob's mass, or what makes a bar's weightiest part heavier. */
  private Optional<Setting> mass() {
    if (!(document.layout() instanceof BenchLayout bench
        && bench.suspension() instanceof HookedBar bar)) {
      return grams("/pendulum/bobMassG");
    }
    List<Body> sent = canonical.object("pendulum").objects("parts");
    int weightiest = 0;
    for (int i = 1; i < sent.size(); i++) {
      weightiest =
          moment(bar.parts().get(i)) > moment(bar.parts().get(weightiest)) ? i : weightiest;
    }
    String pointer = "/pendulum/parts/" + weightiest;
    Body part = sent.get(weightiest);
    if (part.has("massG")) {
      return grams(pointer + "/massG");
    }
    String size = part.has("diameterMm") ? "/diameterMm" : "/heightMm";
    return of(pointer + size, 0.5, 0.1, MOST_MM, 1);
  }

  private static double moment(BarPart part) {
    return part.mass() * part.centre();
  }

  private Optional<Setting> grams(String pointer) {
    double step = number(pointer).orElse(0) < 10 ? 0.1 : 1;
    return of(pointer, step, 0.01, 100_000, 1);
  }

  private Optional<Setting> bobHeight() {
    boolean ball = canonical.findObject("bobMagnet").map(b -> !b.has("heightMm")).orElse(true);
    return of(ball ? "/bobMagnet/diameterMm" : "/bobMagnet/heightMm", 0.5, 0.5, 500, 1);
  }

  private Optional<Setting> loss() {
    Body damping = canonical.object("damping");
    if (damping.has("swingsToHalf")) {
      return of("/damping/swingsToHalf", 1, 1, 1e6, -1);
    }
    if (damping.has("qualityFactor")) {
      return of("/damping/qualityFactor", 1, 1, 1e7, -1);
    }
    double arm = ((BenchLayout) document.layout()).suspension().body().bobArm();
    double pivot = damping.findNumber("pivotTorqueNm").orElse(0) / arm;
    double linear = damping.findNumber("linearNsPerM").orElse(0) * TYPICAL_SPEED;
    if (pivot > linear) {
      double own = damping.number("pivotTorqueNm");
      return of("/damping/pivotTorqueNm", digit(own), 0, 10, 1);
    }
    if (linear > 0 || !damping.has("dragCoefficient")) {
      String pointer = "/damping/linearNsPerM";
      return Optional.of(
          new Setting(
              pointer,
              OptionalDouble.of(damping.findNumber("linearNsPerM").orElse(0)),
              digit(damping.findNumber("linearNsPerM").orElse(0)),
              0,
              1000,
              1));
    }
    return of("/damping/dragCoefficient", 0.05, 0, 10, 1);
  }

  /** A step of three digits; of a figure that is 0 a tenth of a thousandth. */
  private static double digit(double value) {
    return value > 0 ? Math.pow(10, Math.floor(Math.log10(value)) - 2) : 1e-4;
  }

  @Override
  public Optional<Change> word(Knob knob, int magnet) {
    return switch (knob) {
      case LABEL ->
          word("/magnets/" + magnet + "/label", "Magnet " + (magnet + 1), Optional.empty());
      case POLE -> {
        String pointer = "/magnets/" + magnet + "/poleUp";
        Optional<String> own = text(pointer);
        yield own.flatMap(
            pole -> word(pointer, pole.equals("north") ? "south" : "north", Optional.of(pole)));
      }
      case FIXING ->
          canonical.has("plate")
              ? word("/plate/fixing", "fixed", text("/plate/fixing"))
              : Optional.empty();
      default -> Optional.empty();
    };
  }

  private static Optional<Change> word(String pointer, String to, Optional<String> from) {
    return from.isPresent() && from.get().equals(to)
        ? Optional.empty()
        : Optional.of(new Change.OfWord(pointer, from, to));
  }

  private OptionalDouble number(String pointer) {
    JsonNode node = canonical.toTree().at(pointer);
    return node.isNumber() ? OptionalDouble.of(node.doubleValue()) : OptionalDouble.empty();
  }

  private Optional<String> text(String pointer) {
    JsonNode node = canonical.toTree().at(pointer);
    return node.isString() ? Optional.of(node.stringValue()) : Optional.empty();
  }

  @Override
  public Optional<CheckedRig> with(Change change) {
    try {
      return Optional.of(LayoutRig.of(changed(change)));
    } catch (ProblemException e) {
      return Optional.empty();
    }
  }

  /**
   * The layout with a member changed.
   *
   * @throws ProblemException where nobody could build it
   */
  LayoutDocument changed(Change change) {
    ObjectNode tree = canonical.toTree();
    String[] steps = change.pointer().substring(1).split("/", -1);
    JsonNode node = tree;
    for (int i = 0; i < steps.length - 1; i++) {
      node =
          node instanceof ArrayNode list
              ? list.get(Integer.parseInt(steps[i]))
              : node.get(steps[i]);
    }
    ObjectNode owner = (ObjectNode) node;
    String member = steps[steps.length - 1];
    if (change instanceof Change.OfFigure figure) {
      owner.put(member, figure.to());
    } else if (change instanceof Change.OfWord word) {
      owner.put(member, word.to());
    }
    return LayoutDocument.ofCanonical(tree.toString().getBytes(StandardCharsets.UTF_8));
  }
}
