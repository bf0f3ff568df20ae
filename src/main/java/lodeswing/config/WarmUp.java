package lodeswing.config;

import java.time.Duration;
import java.util.List;
import lodeswing.analysis.basin.BasinMap;
import lodeswing.analysis.basin.BasinSurveyor;
import lodeswing.core.field.FieldGrid;
import lodeswing.core.field.FieldSources;
import lodeswing.core.field.Frame;
import lodeswing.core.field.Surface;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.integrate.lane.LaneProvider;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.magnet.MagnetArray;
import lodeswing.core.outcome.OutcomeFinders;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.window.BasinWindow;
import lodeswing.core.window.PixelGrid;
import lodeswing.job.BackgroundThread;
import lodeswing.job.Pace;
import lodeswing.render.png.BasinPainter;
import lodeswing.web.landscape.Landscapes;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.layout.SampleLayouts;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/**
 * Computes and paints small maps of a sample of either model right after the start, in the
 * background: the first 65,536 releases of a process took ten times as long as the next, until the
 * compiler had seen the lanes at work, and the first figure of a lesson would wait for it.
 *
 * <p>What the maps of the last second of each sample cost, beside the time that they took, tells
 * how fast this machine is, so that the first request that is refused hears a measured time.
 */
@Component
class WarmUp {

  private static final Logger LOG = LoggerFactory.getLogger(WarmUp.class);
  private static final List<String> SAMPLES = List.of("paper-triangle", "three-stations");
  private static final Duration A_SAMPLE = Duration.ofSeconds(3);

  /** The last part of a sample's time, in which the code is compiled. */
  private static final Duration MEASURED = Duration.ofSeconds(1);

  private static final String MANY_MAGNETS = "crowded-shelf";
  private static final double FIELD_HALF = 0.1;
  private static final int SIDE = 64;
  private static final double LONGEST = 400;
  private static final Tolerance TOLERANCE = Tolerance.of(1e-6);

  /** Half of a window near the magnets, as a share of the greatest distance of a rest point. */
  private static final double REACH = 1.2;

  private final SampleLayouts samples;
  private final Landscapes landscapes;
  private final OutcomeFinders finders;
  private final LaneProvider lanes;
  private final Pace pace;
  private final boolean wanted;
  private volatile boolean over;

  WarmUp(
      LayoutStore layouts,
      Landscapes landscapes,
      LaneProvider lanes,
      Pace pace,
      @Value("${lodeswing.warm-up}") boolean wanted) {
    this.samples = layouts.samples();
    this.landscapes = landscapes;
    // Finders of its own: nobody has asked for these releases, so they are not counted.
    this.finders = new OutcomeFinders(lanes);
    this.lanes = lanes;
    this.pace = pace;
    this.wanted = wanted;
  }

  @EventListener(ApplicationReadyEvent.class)
  void begin() {
    if (!wanted) {
      over = true;
      return;
    }
    new BackgroundThread("warm-up").newThread(this::run).start();
  }

  /** Whether the lanes have been seen at work. */
  boolean over() {
    return over;
  }

  private void run() {
    long begun = System.nanoTime();
    try {
      for (String name : SAMPLES) {
        mapsOf(samples.get(name).document());
      }
      fieldsOf(samples.get(MANY_MAGNETS).document());
      LOG.info(
          "Warmed up in {} s; {} releases a second",
          (System.nanoTime() - begun) / 1_000_000_000,
          Math.round(pace.releasesPerSecond()));
    } catch (RuntimeException e) {
      LOG.warn("The warm-up failed; the first maps will be slow", e);
    } finally {
      over = true;
    }
  }

  /**
   * Maps of the field near and far from magnets: the first of a process took ten times the next.
   */
  private void fieldsOf(LayoutDocument layout) {
    BenchLayout bench = (BenchLayout) layout.layout();
    FieldSources sources = new FieldSources(new MagnetArray(bench.magnets(), bench.backing()));
    Surface surface = Surface.level(bench.bobCentreHeight());
    long end = System.nanoTime() + MEASURED.toNanos();
    while (System.nanoTime() - end < 0) {
      FieldGrid.of(sources, lanes, Frame.square(0, 0, FIELD_HALF, SIDE), surface, fraction -> {});
    }
  }

  private void mapsOf(LayoutDocument layout) {
    Landscape landscape = landscapes.of(layout, LayoutPlace.STORED);
    double farthest =
        landscape.restPoints().list().stream()
            .mapToDouble(point -> Math.hypot(point.x(), point.y()))
            .max()
            .orElseThrow();
    var window = new BasinWindow(0, 0, REACH * farthest);
    new BasinSurveyor(landscape, window, finders, LONGEST).survey(fraction -> {});
    long cost = landscapes.costOf(layout).map(SIDE * SIDE, false);
    long end = System.nanoTime() + A_SAMPLE.toNanos();
    for (long begun = System.nanoTime(); begun - end < 0; begun = System.nanoTime()) {
      PixelGrid grid = PixelGrid.whole(window, SIDE, SIDE);
      BasinMap map =
          BasinMap.of(landscape, grid, finders.of(landscape, TOLERANCE, LONGEST), fraction -> {});
      if (end - begun < MEASURED.toNanos()) {
        pace.measured(cost, Duration.ofNanos(System.nanoTime() - begun));
      }
      new BasinPainter(map, 1, false).png(grid);
    }
  }
}
