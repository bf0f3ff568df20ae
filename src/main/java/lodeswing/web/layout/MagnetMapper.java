package lodeswing.web.layout;

import java.util.Optional;
import lodeswing.core.geometry.Vec3;
import lodeswing.core.magnet.Block;
import lodeswing.core.magnet.Dipole;
import lodeswing.core.magnet.Disc;
import lodeswing.core.magnet.Grade;
import lodeswing.core.magnet.Magnet;
import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.core.magnet.Pole;
import lodeswing.core.magnet.Ring;
import lodeswing.core.magnet.Sphere;
import lodeswing.core.suspension.BarShape;
import lodeswing.web.body.Body;
import lodeswing.web.body.NearestName;

/** Maps magnets from millimetres and trade codes to SI. */
final class MagnetMapper {
  private static final double MM = 1000;

  private final LayoutFindings findings;

  MagnetMapper(LayoutFindings findings) {
    this.findings = findings;
  }

  /**
   * A magnet of the plate and the room it takes.
   *
   * @param magnet in SI
   * @param solid its room
   */
  record Placed(PlacedMagnet magnet, Solid solid) {}

  /** The pole that a word names. */
  static Pole pole(String word) {
    return word.equals("north") ? Pole.NORTH : Pole.SOUTH;
  }

  /** A magnet of the plate; empty where it has a fault. */
  Optional<Placed> placed(Body magnet, int index, SentPlaces places) {
    return magnet(magnet, places.magnet(index, "grade"), places.magnet(index, "innerDiameterMm"))
        .map(
            mapped -> {
              double x = magnet.number("x") / MM;
              double y = magnet.number("y") / MM;
              double bottom = magnet.number("bottomMm") / MM;
              double turn = Math.toRadians(magnet.findNumber("turnDeg").orElse(0));
              var centre = new Vec3(x, y, bottom + mapped.halfHeight());
              var pole = pole(magnet.text("poleUp"));
              return new Placed(
                  new PlacedMagnet(mapped, centre, turn, pole), solid(magnet, x, y, bottom));
            });
  }

  /**
   * A magnet by its size and strength; empty where it has a fault.
   *
   * @param gradeAt where a grade that is not known is reported
   * @param holeAt where a hole wider than its ring is reported
   */
  Optional<Magnet> magnet(Body magnet, String gradeAt, String holeAt) {
    String shape = magnet.text("shape");
    if (shape.equals("dipole")) {
      return Optional.of(new Dipole(magnet.number("momentAm2")));
    }
    Optional<Double> remanence = remanence(magnet, gradeAt);
    boolean whole = true;
    if (shape.equals("ring") && magnet.number("innerDiameterMm") >= magnet.number("diameterMm")) {
      findings.impossible(
          holeAt,
          "must be less than the ring's diameter of "
              + Figures.millimetres(magnet.number("diameterMm") / MM));
      whole = false;
    }
    return whole ? remanence.map(br -> shaped(magnet, br)) : Optional.empty();
  }

  private static Magnet shaped(Body magnet, double remanence) {
    return switch (magnet.text("shape")) {
      case "disc" -> new Disc(half(magnet, "diameterMm"), full(magnet, "heightMm"), remanence);
      case "ring" ->
          new Ring(
              half(magnet, "innerDiameterMm"),
              half(magnet, "diameterMm"),
              full(magnet, "heightMm"),
              remanence);
      case "block" ->
          new Block(
              full(magnet, "lengthMm"),
              full(magnet, "widthMm"),
              full(magnet, "heightMm"),
              remanence);
      default -> new Sphere(half(magnet, "diameterMm"), remanence);
    };
  }

  private Optional<Double> remanence(Body magnet, String gradeAt) {
    if (magnet.has("remanenceT")) {
      return Optional.of(magnet.number("remanenceT"));
    }
    String code = magnet.text("grade");
    Optional<Double> found = Grade.find(code).map(Grade::remanence);
    if (found.isEmpty()) {
      var codes = Grade.all().stream().map(Grade::code).toList();
      String meant =
          NearestName.find(code, codes).map(near -> "did you mean \"" + near + "\"? ").orElse("");
      findings.unknown(
          gradeAt,
          "is not a known grade; "
              + meant
              + "known are "
              + String.join(", ", codes)
              + "; or give remanenceT");
    }
    return found;
  }

  /** The room of a magnet whose lower face (a dipole's centre) is at a height [m]. */
  static Solid solid(Body magnet, double x, double y, double bottom) {
    return switch (magnet.text("shape")) {
      case "disc" ->
          new Tube(x, y, bottom, bottom + full(magnet, "heightMm"), 0, half(magnet, "diameterMm"));
      case "ring" ->
          new Tube(
              x,
              y,
              bottom,
              bottom + full(magnet, "heightMm"),
              half(magnet, "innerDiameterMm"),
              half(magnet, "diameterMm"));
      case "block" ->
          new Box(
              x,
              y,
              bottom,
              bottom + full(magnet, "heightMm"),
              half(magnet, "lengthMm"),
              half(magnet, "widthMm"),
              Math.toRadians(magnet.findNumber("turnDeg").orElse(0)));
      case "sphere" ->
          new Ball(x, y, bottom + half(magnet, "diameterMm"), half(magnet, "diameterMm"));
      default -> new Ball(x, y, bottom, Ball.GRAIN);
    };
  }

  /** The shape of a bob magnet as a part of a bar. */
  static BarShape barShape(Body magnet) {
    return switch (magnet.text("shape")) {
      case "disc" -> new BarShape.Cylinder(full(magnet, "diameterMm"), full(magnet, "heightMm"));
      case "ring" ->
          new BarShape.HollowCylinder(
              full(magnet, "diameterMm"),
              full(magnet, "innerDiameterMm"),
              full(magnet, "heightMm"));
      case "block" ->
          new BarShape.Cuboid(
              full(magnet, "lengthMm"), full(magnet, "widthMm"), full(magnet, "heightMm"));
      case "sphere" -> new BarShape.Ball(full(magnet, "diameterMm"));
      default -> new BarShape.Point();
    };
  }

  /** The bob magnet's own mass [kg]: weighed, or from size and grade; empty where neither is. */
  static Optional<Double> mass(Body magnet) {
    if (magnet.has("massG")) {
      return Optional.of(magnet.number("massG") / 1000);
    }
    return magnet
        .findText("grade")
        .flatMap(Grade::find)
        .map(grade -> grade.density() * barShape(magnet).volume());
  }

  private static double full(Body magnet, String member) {
    return magnet.number(member) / MM;
  }

  private static double half(Body magnet, String member) {
    return magnet.number(member) / (2 * MM);
  }
}
