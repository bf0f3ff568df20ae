package lodeswing.benchmark;

import java.nio.ByteBuffer;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import lodeswing.core.field.FieldGrid;
import lodeswing.core.field.FieldSources;
import lodeswing.core.field.Frame;
import lodeswing.core.field.Surface;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.integrate.lane.LaneProvider;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.magnet.MagnetArray;
import lodeswing.core.outcome.Ends;
import lodeswing.core.outcome.OutcomeFinder;
import lodeswing.core.outcome.OutcomeFinders;
import lodeswing.core.rig.BenchLayout;
import lodeswing.web.layout.SampleLayouts;

/**
 * Digests of ends and sealing times of twenty layouts, and of the samples' fields: the same text on
 * every lane width, number of threads and Java version, which {@code .ci/lane-bits} compares.
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
    for (LaneScene scene : LaneScene.twenty()) {
      System.out.println(index++ + " " + digest(scene, provider));
    }
    for (SampleLayouts.Sample sample : SampleLayouts.load().all()) {
      if (sample.document().layout() instanceof BenchLayout bench) {
        System.out.println("field " + index++ + " " + digest(bench, provider));
      }
    }
  }

  /** The field close over the magnets, so that near and far sources meet in one block. */
  private static String digest(BenchLayout bench, LaneProvider provider) throws Exception {
    FieldSources sources = new FieldSources(new MagnetArray(bench.magnets(), bench.backing()));
    FieldGrid grid =
        FieldGrid.of(
            sources, provider, Frame.square(0, 0, 0.1, 101), Surface.level(0.006), done -> {});
    MessageDigest sha = MessageDigest.getInstance("SHA-256");
    ByteBuffer number = ByteBuffer.allocate(Double.BYTES);
    for (int i = 0; i < grid.frame().count(); i++) {
      for (int axis = 0; axis < 3; axis++) {
        sha.update(number.putDouble(0, grid.component(i, axis)).array());
      }
    }
    return HexFormat.of().formatHex(sha.digest());
  }

  private static String digest(LaneScene scene, LaneProvider provider) throws Exception {
    OutcomeFinder finder =
        new OutcomeFinders(provider).of(Landscape.of(scene.layout()), Tolerance.of(1e-6), 60);
    MessageDigest sha = MessageDigest.getInstance("SHA-256");
    for (int count : COUNTS) {
      double[] releases = scene.releases(count, count, 1);
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
