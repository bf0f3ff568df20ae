package lodeswing.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import lodeswing.core.geometry.Vec3;
import lodeswing.core.loss.LossLaw;
import lodeswing.core.magnet.Block;
import lodeswing.core.magnet.Disc;
import lodeswing.core.magnet.Magnet;
import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.core.magnet.Pole;
import lodeswing.core.magnet.Ring;
import lodeswing.core.magnet.Sphere;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.suspension.Cord;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Twelve sets of magnets whose figures were worked out by hand, without our code: all agree to 2 %.
 *
 * <p>How, with z from the pole face, lengths in millimetres:
 *
 * <ul>
 *   <li>Field on the axis. Disc: Br/2 ((z+h)/sqrt(R^2+(z+h)^2) - z/sqrt(R^2+z^2)); ring: the disc
 *       less the disc of its hole; block: Br/pi (atan(LW/(2z sqrt(4z^2+L^2+W^2))) - the same at
 *       z+h); sphere: 2Br/3 (R/(R+z))^3 (E. P. Furlani, Permanent Magnet and Electromechanical
 *       Devices (2001), chapter 4; J. D. Jackson (1999), section 5.10). They are written out below.
 *   <li>Reading of the probe at z = 0.38: of long magnets and spheres that on the axis. Flat discs
 *       and rings have their greatest normal field near the rim: the charges of both faces summed
 *       over the angle, the radius in closed form, by adaptive quadrature (QUADPACK) and a bounded
 *       search; flat blocks: four arctangents a face (Furlani, section 4.2) and a downhill search.
 *   <li>Flux index: reading^2 times area of the face, 1 T^2 mm^2 = 100 kG^2 mm^2 (SOR/2011-17,
 *       schedule 10).
 *   <li>Distance to 0.5 mT: the field on the axis solved for z; of all together their sum.
 *   <li>Pull at contact. Discs: pi Br^2 R^2/mu0 times the integral of J1(q)^2/q (1-exp(-qh/R))^2
 *       (D. Vokoun, M. Beleggia, L. Heller and P. Sittner, J. Magn. Magn. Mater. 321 (2009) 3758,
 *       for no gap), by Gauss's rule between zeros, tail 1/(pi q^2); rings: R J1(qR) - Ri J1(qRi)
 *       in its place; blocks: the field above over the face by graded Gauss points; spheres: 3 mu0
 *       m^2/(2 pi (2R)^4).
 * </ul>
 */
class HandWorkedSafetyTest {

  private static final double MM = 1e-3;
  private static final double TWO_PER_CENT = 0.02;

  /**
   * A set.
   *
   * @param magnets the bob's first
   * @param index greatest flux index of a small part [kG^2 mm^2]
   * @param over how many are small parts with 50 or more
   * @param reach of the strongest to 0.5 mT [mm]
   * @param together of all to 0.5 mT [mm]
   * @param onSteel pull of the strongest on its like, and on steel [N]
   * @param axis its field on the axis [T], written out
   */
  record HandWorked(
      String name,
      List<Magnet> magnets,
      double index,
      int over,
      double reach,
      double together,
      double onSteel,
      DoubleUnaryOperator axis) {

    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<HandWorked> sets() {
    return Stream.of(
        // Reading 356.80 mT at r = 5.72 (on the axis 318.03), face 176.715 mm^2: 2,249.7.
        new HandWorked(
            "three ferrite discs under a neodymium disc",
            set(disc(15, 5, 1.195), 3, disc(25, 5, 0.385)),
            2249.7,
            4,
            66.68,
            104.33,
            48.578,
            z -> discAxis(7.5, 5, 1.195, z)),
        // A long rod: on the axis 584.26 mT, face 78.540 mm^2: 2,681.0.
        new HandWorked(
            "two rods",
            set(disc(10, 20, 1.305), 1, disc(10, 20, 1.305)),
            2681.0,
            2,
            77.35,
            99.77,
            50.576,
            z -> discAxis(5, 20, 1.305, z)),
        // 3 x 3: on the axis 436.17 mT, 7.069 mm^2: 134.48. 8 x 1 of Y10: 34.16 mT, 50.265: 5.87.
        new HandWorked(
            "a tiny neodymium disc over weak ferrite",
            set(disc(3, 3, 1.305), 6, disc(8, 1, 0.2175)),
            134.48,
            1,
            19.17,
            30.00,
            4.0312,
            z -> discAxis(1.5, 3, 1.305, z)),
        // Disc: 426.47 mT at r = 7.12, 314.159 mm^2: 5,713.9. Block: 131.20 mT, 800 mm^2: 1,377.1.
        new HandWorked(
            "four ferrite blocks under a large disc",
            set(disc(20, 10, 1.195), 4, block(40, 20, 10, 0.385)),
            5713.9,
            5,
            100.80,
            166.60,
            112.294,
            z -> discAxis(10, 10, 1.195, z)),
        // Disc 12 x 4: 345.80 mT at r = 4.37, 113.097 mm^2: 1,352.4. Ring: 110.43 mT, 593.761:
        // 724.1.
        new HandWorked(
            "a disc over a ferrite ring",
            set(disc(12, 4, 1.195), 1, ring(30, 12, 6, 0.385)),
            1352.4,
            2,
            71.19,
            80.94,
            31.090,
            z -> ringAxis(6, 15, 6, 0.385, z)),
        // Cube of 5: on the axis 489.89 mT, 25 mm^2: 599.99.
        new HandWorked(
            "four cubes",
            set(block(5, 5, 5, 1.305), 3, block(5, 5, 5, 1.305)),
            599.99,
            4,
            34.806,
            56.72,
            13.785,
            z -> blockAxis(5, 5, 5, 1.305, z)),
        // Spheres of 5, as sold by the hundred: 538.54 mT, section 19.635 mm^2: 569.5.
        new HandWorked(
            "six spheres of 5 mm",
            set(sphere(5, 1.235), 5, sphere(5, 1.235)),
            569.46,
            6,
            27.022,
            51.14,
            3.9719,
            z -> sphereAxis(2.5, 1.235, z)),
        // 686.88 mT, section 176.715 mm^2: 8,337.5.
        new HandWorked(
            "two spheres of 15 mm",
            set(sphere(15, 1.195), 1, sphere(15, 1.195)),
            8337.5,
            2,
            80.099,
            102.87,
            33.469,
            z -> sphereAxis(7.5, 1.195, z)),
        // Ring 20/10 x 5: 404.23 mT at r = 8.02, 235.619 mm^2: 3,850.0. 15/5 x 10: 3,310.7.
        new HandWorked(
            "neodymium rings",
            set(ring(15, 5, 10, 1.195), 2, ring(20, 10, 5, 1.305)),
            3850.0,
            3,
            79.050,
            112.59,
            91.787,
            z -> ringAxis(2.5, 7.5, 10, 1.195, z)),
        // 266.00 mT at (3.98, 1.41) against 218.92 on the axis, 50 mm^2: 353.78.
        new HandWorked(
            "three thin blocks",
            set(block(10, 5, 1.5, 1.235), 2, block(10, 5, 1.5, 1.235)),
            353.78,
            3,
            29.817,
            43.58,
            10.211,
            z -> blockAxis(10, 5, 1.5, 1.235, z)),
        // Slender ferrite bars: on the axis 158.25 mT, 16 mm^2: 40.07, below the limit.
        new HandWorked(
            "three slender ferrite bars",
            set(block(4, 4, 16, 0.385), 2, block(4, 4, 16, 0.385)),
            40.07,
            0,
            24.761,
            38.35,
            0.9277,
            z -> blockAxis(4, 4, 16, 0.385, z)),
        // 40 mm wide, no small part: 436.75 mT at r = 17.77, 1,256.64 mm^2: 23,970.
        new HandWorked(
            "two great discs",
            set(disc(40, 10, 1.455), 1, disc(40, 10, 1.455)),
            23970,
            0,
            173.853,
            220.82,
            410.74,
            z -> discAxis(20, 10, 1.455, z)));
  }

  private static Magnet disc(double diameter, double height, double remanence) {
    return new Disc(diameter / 2 * MM, height * MM, remanence);
  }

  private static Magnet ring(double diameter, double inner, double height, double remanence) {
    return new Ring(inner / 2 * MM, diameter / 2 * MM, height * MM, remanence);
  }

  private static Magnet block(double length, double width, double height, double remanence) {
    return new Block(length * MM, width * MM, height * MM, remanence);
  }

  private static Magnet sphere(double diameter, double remanence) {
    return new Sphere(diameter / 2 * MM, remanence);
  }

  private static List<Magnet> set(Magnet bob, int count, Magnet plate) {
    List<Magnet> magnets = new ArrayList<>(List.of(bob));
    for (int i = 0; i < count; i++) {
      magnets.add(plate);
    }
    return magnets;
  }

  static double discAxis(double radius, double height, double remanence, double z) {
    return remanence
        / 2
        * ((z + height) / Math.sqrt(radius * radius + (z + height) * (z + height))
            - z / Math.sqrt(radius * radius + z * z));
  }

  private static double ringAxis(
      double inner, double outer, double height, double remanence, double z) {
    return discAxis(outer, height, remanence, z) - discAxis(inner, height, remanence, z);
  }

  private static double blockAxis(
      double length, double width, double height, double remanence, double z) {
    return remanence / Math.PI * (corner(length, width, z) - corner(length, width, z + height));
  }

  private static double corner(double length, double width, double z) {
    return Math.atan(
        length * width / (2 * z * Math.sqrt(4 * z * z + length * length + width * width)));
  }

  private static double sphereAxis(double radius, double remanence, double z) {
    return 2 * remanence / 3 * Math.pow(radius / (radius + z), 3);
  }

  static BenchLayout rig(List<Magnet> magnets) {
    List<PlacedMagnet> plate = new ArrayList<>();
    for (int i = 1; i < magnets.size(); i++) {
      double height = magnets.get(i).halfHeight();
      plate.add(
          new PlacedMagnet(magnets.get(i), new Vec3(0.1 * i - 0.3, 0, height), 0, Pole.SOUTH));
    }
    return new BenchLayout(
        new Cord(0.42, 0.045),
        Optional.of(new BenchLayout.BobMagnet(magnets.get(0), Pole.NORTH)),
        0.03,
        plate,
        Optional.empty(),
        9.80665,
        LossLaw.none());
  }

  private static SafetyReview review(BenchLayout rig) {
    return SafetyReview.of(
        new SafetyRig(
            rig,
            rig.magnets().stream().map(magnet -> OptionalDouble.empty()).toList(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty()));
  }

  private static double figure(SafetyReview review, SafetyFigure figure) {
    return review.notes().stream()
        .filter(note -> note.figures().containsKey(figure))
        .mapToDouble(note -> figure.shown(note.figures().getOrDefault(figure, Double.NaN)))
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest
  @MethodSource("sets")
  void figuresAreThoseWorkedOutByHand(HandWorked set) {
    BenchLayout rig = rig(set.magnets());
    SafetyReview review = review(rig);
    close(set.index(), figure(review, SafetyFigure.FLUX_INDEX));
    close(set.reach(), figure(review, SafetyFigure.IMPLANT_DISTANCE));
    close(set.together(), figure(review, SafetyFigure.IMPLANT_DISTANCE_TOGETHER));
    close(set.onSteel(), figure(review, SafetyFigure.STEEL_FORCE));
    assertEquals(
        set.over(),
        review.magnets().stream()
            .filter(MagnetSafety::over)
            .mapToInt(magnet -> magnet.kind().count())
            .sum());
    assertEquals(
        set.over() > 0,
        Exceeded.of(rig).stream().anyMatch(one -> one.code() == SafetyCode.SWALLOWING));
    assertEquals(
        set.onSteel() >= 140,
        Exceeded.of(rig).stream().anyMatch(one -> one.code() == SafetyCode.PINCHING));
  }

  private static void close(double expected, double found) {
    assertEquals(expected, found, TWO_PER_CENT * expected);
  }

  /** The formulas above give the distances that are stated. */
  @ParameterizedTest
  @MethodSource("sets")
  void distancesSolveTheFieldOnTheAxis(HandWorked set) {
    assertEquals(0.5e-3, set.axis().applyAsDouble(set.reach()), 1e-6);
    assertTrue(set.axis().applyAsDouble(set.reach() + 1) < 0.5e-3);
  }
}
