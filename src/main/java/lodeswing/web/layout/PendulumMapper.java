package lodeswing.web.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lodeswing.core.loss.AirDrag;
import lodeswing.core.loss.LossLaw;
import lodeswing.core.suspension.BarPart;
import lodeswing.core.suspension.BarShape;
import lodeswing.core.suspension.Cord;
import lodeswing.core.suspension.HookedBar;
import lodeswing.core.suspension.Suspension;
import lodeswing.core.suspension.Yoke;
import lodeswing.web.body.Body;
import lodeswing.web.body.JsonPointer;

/** Maps the pendulum and its losses to SI. */
final class PendulumMapper {
  private static final double MM = 1000;
  private static final double GRAMS = 1000;

  private final Body layout;
  private final SentPlaces places;
  private final LayoutFindings findings;
  private final Optional<Body> bob;

  PendulumMapper(Body layout, SentPlaces places, LayoutFindings findings) {
    this.layout = layout;
    this.places = places;
    this.findings = findings;
    this.bob = layout.findObject("bobMagnet");
  }

  /** What the bob hangs on; empty where it has a fault. */
  Optional<Suspension> suspension() {
    Body pendulum = layout.object("pendulum");
    return switch (pendulum.text("kind")) {
      case "cord" -> cord(pendulum);
      case "yoke" -> yoke(pendulum);
      default -> bar(pendulum);
    };
  }

  private Optional<Suspension> cord(Body pendulum) {
    if (!bobHangsBelow(pendulum, "lengthMm")) {
      return Optional.empty();
    }
    return Optional.of(
        new Cord(pendulum.number("lengthMm") / MM, pendulum.number("bobMassG") / GRAMS));
  }

  private Optional<Suspension> yoke(Body pendulum) {
    if (!bobHangsBelow(pendulum, "legMm")) {
      return Optional.empty();
    }
    return Optional.of(
        new Yoke(
            pendulum.number("yokeSpanMm") / MM,
            pendulum.number("yokeDropMm") / MM,
            pendulum.number("legMm") / MM,
            pendulum.number("bobMassG") / GRAMS));
  }

  private boolean bobHangsBelow(Body pendulum, String member) {
    double half =
        bob.map(b -> MagnetMapper.barShape(b)).map(PendulumMapper::height).orElse(0.0) / 2;
    double length = pendulum.number(member) / MM;
    if (length <= half) {
      findings.impossible(
          places.of("/pendulum/" + member),
          "must be above " + Figures.millimetres(half) + ", half the bob magnet's height");
      return false;
    }
    bob.flatMap(MagnetMapper::mass)
        .filter(own -> own > pendulum.number("bobMassG") / GRAMS)
        .ifPresent(
            own ->
                findings.warn(
                    "bob-lighter-than-magnet",
                    places.of("/pendulum/bobMassG"),
                    "The whole bob is said to weigh "
                        + Figures.grams(pendulum.number("bobMassG") / GRAMS)
                        + ", but its magnet alone weighs about "
                        + Figures.grams(own)
                        + "."));
    return true;
  }

  private Optional<Suspension> bar(Body pendulum) {
    var parts = new ArrayList<BarPart>();
    double lowest = Double.NEGATIVE_INFINITY;
    List<Body> sent = pendulum.objects("parts");
    for (int i = 0; i < sent.size(); i++) {
      Body part = sent.get(i);
      Optional<BarShape> shape = shape(part, JsonPointer.element("/pendulum/parts", i));
      double top = part.number("fromTopMm") / MM;
      if (shape.isPresent()) {
        double height = height(shape.get());
        parts.add(part(part, shape.get(), top + height / 2));
        lowest = Math.max(lowest, top + height);
      }
    }
    if (parts.size() < sent.size()) {
      return Optional.empty();
    }
    double bobHeight = bob.map(b -> height(MagnetMapper.barShape(b))).orElse(0.0);
    double end = lowest;
    double arm =
        pendulum.has("bobFromTopMm")
            ? pendulum.number("bobFromTopMm") / MM
            : lowest + bobHeight / 2;
    boolean whole = bob.map(b -> addBob(b, parts, arm)).orElse(true);
    if ((bob.isEmpty() && arm <= 0) || arm - bobHeight / 2 < 0) {
      findings.impossible(
          places.of("/pendulum"),
          "the bob would be " + Figures.millimetres(-arm) + " above the lower axis, not below it");
      whole = false;
    }
    if (end > arm + bobHeight / 2 + 1e-9) {
      partBelowBob(end - arm - bobHeight / 2);
    }
    return whole ? balanced(pendulum, parts, arm) : Optional.empty();
  }

  private Optional<Suspension> balanced(Body pendulum, List<BarPart> parts, double arm) {
    double moment = parts.stream().mapToDouble(p -> p.mass() * p.centre()).sum();
    double mass = parts.stream().mapToDouble(BarPart::mass).sum();
    if (moment <= 0) {
      findings.impossible(
          places.of("/pendulum/parts"),
          "the centre of mass must lie below the lower axis, but is "
              + Figures.millimetres(-moment / mass)
              + " above it");
      return Optional.empty();
    }
    return Optional.of(new HookedBar(pendulum.number("hookOffsetMm") / MM, parts, arm));
  }

  private boolean addBob(Body magnet, List<BarPart> parts, double arm) {
    Optional<Double> mass = MagnetMapper.mass(magnet);
    if (mass.isEmpty()) {
      if (magnet.findText("grade").isEmpty()) {
        findings.unknown(
            places.of("/bobMagnet/massG"),
            "is missing; on a bar the magnet's mass is needed where it has no grade");
      }
      return false;
    }
    parts.add(BarPart.weighed(MagnetMapper.barShape(magnet), mass.get(), arm));
    return true;
  }

  private void partBelowBob(double below) {
    double clear = layout.number("gapMm") / MM - below;
    String by = "A part of the bar reaches " + Figures.millimetres(below) + " below the bob magnet";
    if (clear < 0) {
      findings.impossible(
          places.of("/pendulum/parts"),
          by + " and " + Figures.millimetres(-clear) + " into the plate");
    } else {
      findings.warn(
          "part-below-bob",
          places.of("/pendulum/parts"),
          by + "; the plate is only " + Figures.millimetres(clear) + " away from it.");
    }
  }

  private Optional<BarShape> shape(Body part, String pointer) {
    return switch (part.text("kind")) {
      case "rod" ->
          Optional.of(new BarShape.Cylinder(full(part, "diameterMm"), full(part, "lengthMm")));
      case "disc" ->
          Optional.of(new BarShape.Cylinder(full(part, "diameterMm"), full(part, "heightMm")));
      case "ring" -> {
        double outer = full(part, "diameterMm");
        double hole = full(part, "innerDiameterMm");
        yield fits(hole, outer, pointer + "/innerDiameterMm")
            ? Optional.of(new BarShape.HollowCylinder(outer, hole, full(part, "heightMm")))
            : Optional.empty();
      }
      case "nut" -> {
        double flats = full(part, "acrossFlatsMm");
        double hole = full(part, "holeDiameterMm");
        yield fits(hole, flats, pointer + "/holeDiameterMm")
            ? Optional.of(new BarShape.HexNut(flats, hole, full(part, "heightMm")))
            : Optional.empty();
      }
      default -> Optional.of(new BarShape.Point());
    };
  }

  private boolean fits(double hole, double outer, String pointer) {
    if (hole >= outer) {
      findings.impossible(
          places.of(pointer),
          "must be less than " + Figures.millimetres(outer) + ", the part's own width");
      return false;
    }
    return true;
  }

  private static BarPart part(Body part, BarShape shape, double centre) {
    return part.has("massG")
        ? BarPart.weighed(shape, part.number("massG") / GRAMS, centre)
        : BarPart.of(shape, PartMaterials.named(part.text("material")), centre);
  }

  /** True extent along the bar; a ball's silhouette is shorter than the ball. */
  private static double height(BarShape shape) {
    return shape instanceof BarShape.Ball ball ? ball.diameter() : shape.extent();
  }

  /** What takes energy out. */
  LossLaw loss(Suspension suspension) {
    Body damping = layout.object("damping");
    double gravity = layout.number("localGravityMPerS2");
    if (damping.has("swingsToHalf")) {
      return LossLaw.fromSwingsToHalf(damping.number("swingsToHalf"), suspension.body(), gravity);
    }
    if (damping.has("qualityFactor")) {
      return LossLaw.fromQualityFactor(damping.number("qualityFactor"), suspension.body(), gravity);
    }
    return new LossLaw(
        damping.findNumber("linearNsPerM").orElse(0),
        drag(damping, suspension),
        damping.findNumber("pivotTorqueNm").orElse(0));
  }

  private List<LossLaw.DragElement> drag(Body damping, Suspension suspension) {
    double coefficient = damping.findNumber("dragCoefficient").orElse(0);
    if (coefficient == 0) {
      return List.of();
    }
    AirDrag air = AirDrag.inRoom(coefficient);
    if (suspension instanceof HookedBar bar) {
      return air.ofBar(bar.parts());
    }
    double area = bob.map(MagnetMapper::barShape).map(s -> s.extent() * s.breadth()).orElse(0.0);
    if (area == 0) {
      findings.unknown(
          places.of("/damping/dragCoefficient"),
          "needs a bob magnet with a size, whose silhouette is the area; or a bar from parts");
      return List.of();
    }
    return List.of(air.small(suspension.body().bobArm(), area));
  }

  private static double full(Body part, String member) {
    return part.number(member) / MM;
  }
}
