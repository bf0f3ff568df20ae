package lodeswing.core.recording;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lodeswing.core.geometry.Vec3;
import lodeswing.core.loss.LossLaw;
import lodeswing.core.magnet.Dipole;
import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.core.magnet.Pole;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.suspension.Cord;

/**
 * A rig of dipoles both as a layout of the service and as a bob of other code.
 *
 * @param length of the cord [m]
 * @param loss force over speed [N s/m]
 * @param plate x, y, z and upward moment of each magnet [m, A m^2]
 */
public record DipoleBench(double length, double loss, List<List<Double>> plate) {

  private static final double MASS = 0.045;
  private static final double HEIGHT = 0.03;
  private static final double BOB = 0.84;
  private static final double GRAVITY = 9.80665;
  private static final double LENGTH = 0.42;

  /** Swings to half: 25. */
  private static final double LOSS =
      MASS * 2 * Math.log(2) / (25 * 2 * Math.PI * Math.sqrt(LENGTH / GRAVITY));

  private static final double Z = 0.0025;
  private static final double MOMENT = -0.75;

  /** A bare pendulum. */
  public static DipoleBench bare() {
    return new DipoleBench(LENGTH, LOSS, List.of());
  }

  /** Three magnets in a ring. */
  public static DipoleBench ring() {
    return new DipoleBench(
        LENGTH,
        LOSS,
        List.of(magnet(0.045, 0), magnet(-0.0225, 0.03897), magnet(-0.0225, -0.03897)));
  }

  /** Three magnets that no mirror and no turn brings to each other's places. */
  public static DipoleBench uneven() {
    return new DipoleBench(
        LENGTH,
        LOSS,
        List.of(magnet(0.045, 0.01), magnet(-0.0125, 0.03897), magnet(-0.0225, -0.03)));
  }

  private static List<Double> magnet(double x, double y) {
    return List.of(x, y, Z, MOMENT);
  }

  /** The same with a longer cord. */
  public DipoleBench longer(double times) {
    return new DipoleBench(times * length, loss, plate);
  }

  /** The same with more loss. */
  public DipoleBench slower(double times) {
    return new DipoleBench(length, times * loss, plate);
  }

  /** As the service has it. */
  public BenchLayout layout() {
    List<PlacedMagnet> magnets = new ArrayList<>();
    for (List<Double> one : plate) {
      Vec3 place = new Vec3(one.get(0), one.get(1), one.get(2));
      Pole up = one.get(3) > 0 ? Pole.NORTH : Pole.SOUTH;
      magnets.add(new PlacedMagnet(new Dipole(Math.abs(one.get(3))), place, 0, up));
    }
    return new BenchLayout(
        new Cord(length, MASS),
        Optional.of(new BenchLayout.BobMagnet(new Dipole(BOB), Pole.NORTH)),
        HEIGHT,
        magnets,
        Optional.empty(),
        GRAVITY,
        new LossLaw(loss, List.of(), 0));
  }

  /** As other code has it. */
  public CartesianBob bob() {
    double[][] magnets = new double[plate.size()][];
    for (int i = 0; i < magnets.length; i++) {
      magnets[i] = plate.get(i).stream().mapToDouble(Double::doubleValue).toArray();
    }
    return new CartesianBob(length, MASS, loss, HEIGHT, BOB, magnets);
  }

  /** Times at a rate [1/s] over a duration [s]. */
  public static double[] times(double duration, double rate) {
    double[] times = new double[(int) (duration * rate) + 1];
    for (int i = 0; i < times.length; i++) {
      times[i] = i / rate;
    }
    return times;
  }
}
