package lodeswing.benchmark;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lodeswing.core.geometry.Vec3;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.magnet.Dipole;
import lodeswing.core.magnet.Disc;
import lodeswing.core.magnet.Magnet;
import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.core.magnet.Pole;
import lodeswing.core.motion.BenchMotion;
import lodeswing.core.motion.PotentialTable;
import lodeswing.core.rig.BenchLayout;
import lodeswing.web.layout.SampleLayouts;

/**
 * What making each bench sample, and grids of 200 magnets, ready takes: processor time of all
 * threads, work counted and foretold, cells and memory of the energy's table, and the share of the
 * whole square of angles where it has no cell.
 *
 * <p>Processor time, since a machine's other load stretches wall time; the first row warms up.
 */
public final class PreparingReport {

  private static final double SPACING = 0.03;
  private static final double CROWD_GAP = 0.025;

  private PreparingReport() {}

  /** Prints the report. */
  public static void main(String[] arguments) {
    Map<String, BenchLayout> layouts = new LinkedHashMap<>();
    SampleLayouts samples = SampleLayouts.load();
    BenchLayout first = (BenchLayout) samples.get("three-stations").document().layout();
    layouts.put("three-stations (first)", first);
    for (SampleLayouts.Sample sample : samples.all()) {
      if (sample.document().layout() instanceof BenchLayout bench && bench.magnetCount() > 0) {
        layouts.put(sample.name(), bench);
      }
    }
    layouts.put("200 discs", crowd(samples, 200));
    layouts.put("200 dipoles", crowd(first, new Dipole(0.4), 200));
    System.out.println(
        "| layout | processor s | work counted | foretold / counted | cells | MB | no cell |\n"
            + "| --- | ---: | ---: | ---: | ---: | ---: | ---: |");
    layouts.forEach(PreparingReport::row);
  }

  private static void row(String name, BenchLayout layout) {
    OperatingSystemMXBean machine =
        (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
    long start = machine.getProcessCpuTime();
    Landscape made = Landscape.of(layout);
    double seconds = (machine.getProcessCpuTime() - start) * 1e-9;
    PotentialTable table = (PotentialTable) ((BenchMotion) made.motion()).potentialEnergy();
    System.out.printf(
        Locale.ROOT,
        "| %s | %.1f | %.2g | %.2f | %,d | %.1f | %.4f |%n",
        name,
        seconds,
        made.work(),
        Landscape.expectedWork(layout) / made.work(),
        made.tableErrors().cells(),
        table.bytes() * 1e-6,
        table.uncovered(BenchMotion.MAX_ANGLE));
  }

  /** Small discs on a grid, under the cord and bob of the sample layout. */
  static BenchLayout crowd(SampleLayouts samples, int count) {
    BenchLayout on = (BenchLayout) samples.get("three-stations").document().layout();
    return crowd(on, new Disc(0.006, 0.004, 1.2), count);
  }

  private static BenchLayout crowd(BenchLayout on, Magnet magnet, int count) {
    int side = (int) Math.ceil(Math.sqrt(count));
    List<PlacedMagnet> placed = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double x = (i % side - 0.5 * (side - 1)) * SPACING;
      int row = i / side;
      double y = (row - 0.5 * (side - 1)) * SPACING;
      Pole up = i % 3 == 0 ? Pole.NORTH : Pole.SOUTH;
      placed.add(new PlacedMagnet(magnet, new Vec3(x, y, magnet.halfHeight()), 0, up));
    }
    return new BenchLayout(
        on.suspension(), on.bob(), CROWD_GAP, placed, Optional.empty(), on.gravity(), on.loss());
  }
}
