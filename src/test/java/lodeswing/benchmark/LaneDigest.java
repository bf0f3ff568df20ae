package lodeswing.benchmark;

import java.nio.ByteBuffer;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import lodeswing.analysis.trace.TrialLayouts;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.integrate.lane.LaneProvider;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.loss.LossLaw;
import lodeswing.core.outcome.Ends;
import lodeswing.core.outcome.OutcomeFinder;
import lodeswing.core.outcome.OutcomeFinders;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Layout;
import lodeswing.core.rig.TextbookLayout;

/**
 * Digests of ends and sealing times of twenty layouts: the same text on every lane width, number of
 * threads and Java version, which {@code .ci/lane-bits} compares.
 */
public final class LaneDigest {

  private static final int[] COUNTS = {1, 4, 13, 25, 207};
  private static final int[] THREADS = {1, 2, 5};

  private LaneDigest() {}

  /** Prints a line a layout; what the lanes ran on goes to the error stream. */
  public static void main(String[] args) throws Exception {
    LaneProvider provider = LaneProvider.choose();
    System.err.println(provider.reason());
    int index = 0;
    for (Layout layout : layouts()) {
      Landscape landscape = Landscape.of(layout);
      double reach = layout instanceof TextbookLayout ? 2 : 0.06;
      System.out.println(index++ + " " + digest(landscape, provider, reach));
    }
  }

  private static List<Layout> layouts() {
    List<Layout> layouts = new ArrayList<>();
    for (int attractors = 1; attractors <= 12; attractors++) {
      layouts.add(ring(attractors));
    }
    for (String name : List.of("three-stations", "one-well", "kitchen-drawer", "turned-centre")) {
      layouts.add(withSwings(name, 4, List.of(), 0));
    }
    List<LossLaw.DragElement> air = List.of(new LossLaw.DragElement(0.42, 3e-3));
    layouts.add(withSwings("three-stations", 6, air, 0));
    layouts.add(withSwings("three-stations", 6, List.of(), 2e-6));
    layouts.add(withSwings("kitchen-drawer", 6, air, 2e-6));
    layouts.add(withSwings("quiet-plate", 6, air, 0));
    return layouts;
  }

  private static TextbookLayout ring(int attractors) {
    List<TextbookLayout.Attractor> magnets = new ArrayList<>();
    for (int m = 0; m < attractors; m++) {
      double angle = 2 * Math.PI * m / attractors;
      double strength = m % 4 == 3 ? -0.5 : 1;
      magnets.add(
          new TextbookLayout.Attractor(
              0.6 * StrictMath.cos(angle), 0.6 * StrictMath.sin(angle), strength));
    }
    return new TextbookLayout(0.5, 0.15 + 0.01 * attractors, 0.3, magnets);
  }

  private static BenchLayout withSwings(
      String name, double swings, List<LossLaw.DragElement> drag, double torque) {
    BenchLayout b = TrialLayouts.bench(name);
    double linear = LossLaw.fromSwingsToHalf(swings, b.suspension().body(), b.gravity()).linear();
    return TrialLayouts.withLoss(name, new LossLaw(linear, drag, torque));
  }

  private static String digest(Landscape landscape, LaneProvider provider, double reach)
      throws Exception {
    OutcomeFinder finder = new OutcomeFinders(provider).of(landscape, Tolerance.of(1e-6), 60);
    MessageDigest sha = MessageDigest.getInstance("SHA-256");
    for (int count : COUNTS) {
      double[] releases = releases(count, reach);
      String first = "";
      for (int threads : THREADS) {
        Ends ends = find(finder, releases, count, threads);
        String text = text(ends);
        if (first.isEmpty()) {
          first = text;
          update(sha, ends);
        } else if (!first.equals(text)) {
          throw new IllegalStateException(threads + " threads differ from one");
        }
      }
    }
    return HexFormat.of().formatHex(sha.digest());
  }

  private static Ends find(OutcomeFinder finder, double[] releases, int count, int threads)
      throws Exception {
    Ends ends = new Ends(count);
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try {
      List<Callable<Void>> parts = new ArrayList<>();
      for (int t = 0; t < threads; t++) {
        int from = count * t / threads;
        int to = count * (t + 1) / threads;
        parts.add(
            () -> {
              finder.find(releases, from, to, ends);
              return null;
            });
      }
      for (var part : pool.invokeAll(parts)) {
        part.get();
      }
    } finally {
      pool.shutdownNow();
    }
    return ends;
  }

  private static double[] releases(int count, double reach) {
    Random random = new Random(count);
    double[] releases = new double[4 * count];
    for (int i = 0; i < 4 * count; i++) {
      releases[i] = (i % 4 < 2 ? 1 : 0.2) * reach * (2 * random.nextDouble() - 1);
    }
    return releases;
  }

  private static String text(Ends ends) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < ends.size(); i++) {
      text.append(ends.end(i)).append(' ').append(Double.toHexString(ends.sealedAt(i))).append(' ');
    }
    return text.toString();
  }

  private static void update(MessageDigest sha, Ends ends) {
    ByteBuffer bytes = ByteBuffer.allocate(12 * ends.size());
    for (int i = 0; i < ends.size(); i++) {
      bytes.putInt(ends.end(i)).putLong(Double.doubleToLongBits(ends.sealedAt(i)));
    }
    sha.update(bytes.array());
  }
}
