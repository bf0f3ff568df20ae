package lodeswing.load;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.Locale;
import lodeswing.load.Connection.Response;

/** Measures the packaged service under load; prints a table and fails where a promise is broken. */
public final class LoadRun {

  /** Below this share of a static file's rate a cached tile has lost its way. */
  private static final double LEAST_RATIO = 0.4;

  private static final String LAYOUT = "/v1/sample-layouts/paper-triangle";

  private LoadRun() {}

  /**
   * Runs all measurements, in less than three minutes.
   *
   * @param arguments the packaged service
   */
  public static void main(String[] arguments) throws Exception {
    boolean kept;
    // No maps of its own meanwhile, and little memory for results, so that it is soon full.
    try (var service =
        LoadedService.start(
            Path.of(arguments[0]),
            "lodeswing.warm-up=false",
            "lodeswing.limits.memory-bytes=8000000",
            "lodeswing.limits.reply-bytes=4000000",
            "lodeswing.limits.waiting-computations=20")) {
      kept = measure(service, System.out);
    }
    System.exit(kept ? 0 : 1);
  }

  private static boolean measure(LoadedService service, PrintStream out) throws Exception {
    String layoutId;
    String tile;
    try (Connection connection = service.connect()) {
      layoutId = connection.ask(Connection.get(LAYOUT)).member("layoutId");
      tile = keptTile(connection, layoutId);
    }
    ReadRate.Rates rates = new ReadRate(service).measure(tile);
    line(out, "size of a tile and of the file", "%d bytes", rates.bytes());
    line(out, "cached tiles a second", "%.0f", rates.tiles());
    line(out, "static files of that size a second", "%.0f", rates.files());
    line(out, "ratio (0.4 at least, 0.6 aimed at)", "%.2f", rates.ratio());
    long before = service.liveBytes();
    MixedLoad.Outcome load = new MixedLoad(service, layoutId).measure(tile);
    long after = service.liveBytes();
    line(out, "cold tiles a second, alone", "%.2f", load.sustained());
    line(out, "cold tiles a second, offered", "%.2f", load.offered());
    load.answers()
        .forEach(
            (kind, count) ->
                line(
                    out,
                    "cold answers: " + kind.name().toLowerCase(Locale.ROOT).replace('_', ' '),
                    "%d",
                    count));
    line(out, "cached reads under that load", "%d", load.latencies().size());
    line(out, "of which failed", "%d", load.failedReads());
    line(out, "p50 of cached reads", "%.1f ms", load.latencyMs(0.5));
    line(out, "p99 of cached reads (aim 250)", "%.1f ms", load.latencyMs(0.99));
    line(out, "longest cached read", "%.1f ms", load.latencyMs(1));
    line(out, "live heap before", "%.1f MB", before / 1e6);
    line(out, "live heap after", "%.1f MB", after / 1e6);
    if (!load.firstWrong().isEmpty()) {
      out.println("neither a result nor 202 nor a refusal with Retry-After: " + load.firstWrong());
    }
    return rates.ratio() >= LEAST_RATIO && load.firstWrong().isEmpty() && load.failedReads() == 0;
  }

  /** The path of a tile that has been computed. */
  private static String keptTile(Connection connection, String layoutId) throws IOException {
    Response posted =
        connection.ask(
            Connection.post("/v1/basins?wait=60", "{\"layoutId\":\"" + layoutId + "\"}"));
    String tile = "/v1/basins/" + posted.member("basinId") + "/tiles/0/0/0";
    Response computed = connection.ask(Connection.get(tile + "?wait=60"));
    if (computed.status() != 200) {
      throw new IOException(tile + " was answered " + computed.text());
    }
    return tile;
  }

  private static void line(PrintStream out, String name, String format, Object value) {
    out.printf(Locale.ROOT, "%-44s %s%n", name, String.format(Locale.ROOT, format, value));
  }
}
