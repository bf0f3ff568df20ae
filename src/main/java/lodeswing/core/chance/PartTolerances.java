package lodeswing.core.chance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import lodeswing.core.geometry.Vec3;
import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.core.rig.BenchLayout;

/**
 * How far the parts of a rig may be from what they are meant to be: bounds, between which all is
 * equally likely, since no more is known (JCGM 100:2008, 4.3.7). A magnet's place lies anywhere in
 * a disc.
 *
 * @param gap of the gap [m], 0 or above
 * @param place of each magnet's place [m]
 * @param length of the suspension's length [m]
 * @param remanence of each magnet's remanence, the bob's too, as a part of it, below 1
 */
public record PartTolerances(double gap, double place, double length, double remanence) {

  /** Parts that are what they are meant to be. */
  public static final PartTolerances EXACT = new PartTolerances(0, 0, 0, 0);

  /**
   * A rig as a builder might have built it. Each part has draws of its own, used or not, so that
   * another tolerance of one part leaves the others as they were.
   */
  public BenchLayout varied(BenchLayout rig, RandomGenerator random) {
    double longer = length * either(random);
    double wider = gap * either(random);
    double bobStrength = 1 + remanence * either(random);
    List<PlacedMagnet> magnets = new ArrayList<>();
    for (PlacedMagnet placed : rig.magnets()) {
      double away = place * Math.sqrt(random.nextDouble());
      double direction = 2 * Math.PI * random.nextDouble();
      double strength = 1 + remanence * either(random);
      Vec3 centre = placed.centre();
      magnets.add(
          new PlacedMagnet(
              placed.magnet().strengthened(strength),
              new Vec3(
                  centre.x() + away * StrictMath.cos(direction),
                  centre.y() + away * StrictMath.sin(direction),
                  centre.z()),
              placed.turn(),
              placed.poleUp()));
    }
    Optional<BenchLayout.BobMagnet> bob =
        rig.bob()
            .map(
                own ->
                    new BenchLayout.BobMagnet(
                        own.magnet().strengthened(bobStrength), own.poleDown()));
    return rig.with(rig.suspension().lengthened(longer), bob, rig.gap() + wider, magnets);
  }

  private static double either(RandomGenerator random) {
    return 2 * random.nextDouble() - 1;
  }
}
