package lodeswing.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.integrate.lane.LaneProvider;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.loss.LossLaw;
import lodeswing.core.outcome.Ends;
import lodeswing.core.outcome.LaneScheme;
import lodeswing.core.outcome.OutcomeFinder;
import lodeswing.core.outcome.OutcomeFinders;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Layout;
import lodeswing.web.layout.SampleLayouts;

/**
 * Labels wrong against time a release, for every scheme on lanes, one thread: a table, and with a
 * file name as argument the picture of it.
 *
 * <p>The textbook scene is that of {@link LaneBenchmark}, 256 by 256 releases; on the bench the
 * three stations with so much loss that half the swing is gone in four, 128 by 128 over +-50 mm.
 * Wrong are labels that differ from those of order 8 at 1e-12; the time is the least of five runs.
 */
public final class WorkPrecisionReport {

  private static final double[] TOLERANCES = {1e-3, 3e-4, 1e-4, 3e-5, 1e-5, 3e-6, 1e-6, 3e-7, 1e-7};
  private static final int RUNS = 5;
  private static final double LONGEST = 400;

  private WorkPrecisionReport() {}

  private record Point(LaneScheme scheme, double tolerance, double microseconds, int wrong) {}

  private record Scene(
      String name, Landscape landscape, int side, double reach, List<LaneScheme> schemes) {

    double[] releases() {
      double[] releases = new double[4 * side * side];
      for (int i = 0; i < side * side; i++) {
        int column = i % side;
        int row = i / side;
        releases[4 * i] = reach * (2 * (column + 0.5) / side - 1);
        releases[4 * i + 1] = reach * (2 * (row + 0.5) / side - 1);
      }
      return releases;
    }
  }

  public static void main(String[] arguments) throws IOException {
    List<Scene> scenes =
        List.of(
            new Scene(
                "textbook", new TextbookScene().landscape, 256, 2, List.of(LaneScheme.values())),
            new Scene(
                "bench", bench(), 128, 0.05, List.of(LaneScheme.ORDER_8, LaneScheme.ORDER_5)));
    StringBuilder drawn = new StringBuilder();
    for (Scene scene : scenes) {
      List<Point> points = measured(scene);
      for (Point p : points) {
        System.out.printf(
            Locale.ROOT,
            "| %s | %s | %.0e | %.2f | %d |%n",
            scene.name,
            p.scheme,
            p.tolerance,
            p.microseconds,
            p.wrong);
      }
      drawn.append(WorkPrecisionPicture.panel(scene.name, scene.side, series(scene, points)));
    }
    if (arguments.length > 0) {
      Files.writeString(Path.of(arguments[0]), WorkPrecisionPicture.whole(drawn.toString()));
    }
  }

  private static Landscape bench() {
    Layout sample = SampleLayouts.load().get("three-stations").document().layout();
    BenchLayout b = (BenchLayout) sample;
    double linear = LossLaw.fromSwingsToHalf(4, b.suspension().body(), b.gravity()).linear();
    return Landscape.of(
        new BenchLayout(
            b.suspension(),
            b.bob(),
            b.gap(),
            b.magnets(),
            b.backing(),
            b.gravity(),
            new LossLaw(linear, List.of(), 0)));
  }

  private static List<WorkPrecisionPicture.Series> series(Scene scene, List<Point> points) {
    List<WorkPrecisionPicture.Series> all = new ArrayList<>();
    for (LaneScheme scheme : scene.schemes) {
      List<double[]> places =
          points.stream()
              .filter(p -> p.scheme == scheme)
              .map(p -> new double[] {p.microseconds, p.wrong})
              .toList();
      all.add(new WorkPrecisionPicture.Series(scheme, places));
    }
    return all;
  }

  private static List<Point> measured(Scene scene) {
    OutcomeFinders finders = new OutcomeFinders(LaneProvider.choose());
    double[] releases = scene.releases();
    int count = releases.length / 4;
    Ends truth = new Ends(count);
    finders
        .of(scene.landscape, LaneScheme.ORDER_8, new Tolerance(1e-13, 1e-12), LONGEST)
        .find(releases, 0, count, truth);
    List<Point> points = new ArrayList<>();
    for (LaneScheme scheme : scene.schemes) {
      for (double tolerance : TOLERANCES) {
        OutcomeFinder finder =
            finders.of(scene.landscape, scheme, Tolerance.of(tolerance), LONGEST);
        Ends found = new Ends(count);
        double least = Double.POSITIVE_INFINITY;
        for (int run = 0; run < RUNS; run++) {
          long begun = System.nanoTime();
          finder.find(releases, 0, count, found);
          least = Math.min(least, (System.nanoTime() - begun) / 1e3 / count);
        }
        int wrong = 0;
        for (int i = 0; i < count; i++) {
          wrong += found.end(i) == truth.end(i) ? 0 : 1;
        }
        points.add(new Point(scheme, tolerance, least, wrong));
      }
    }
    return points;
  }
}
