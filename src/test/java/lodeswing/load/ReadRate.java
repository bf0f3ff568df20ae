package lodeswing.load;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.DoubleStream;

/** Cached tiles a second against a static file of the same size from the same server. */
final class ReadRate {

  private static final int CONNECTIONS = 4;
  private static final double WARM_UP_S = 12;
  private static final double ROUND_S = 2;
  private static final int ROUNDS = 5;

  private final LoadedService service;

  ReadRate(LoadedService service) {
    this.service = service;
  }

  /**
   * What was measured, as medians over rounds that take turns.
   *
   * @param bytes of each body
   * @param tiles GETs a second
   * @param files GETs a second
   */
  record Rates(int bytes, double tiles, double files) {

    double ratio() {
      return tiles / files;
    }
  }

  /** Measures; the tile must be kept already. */
  Rates measure(String tilePath) throws Exception {
    byte[] tile = Connection.get(tilePath);
    byte[] body;
    try (Connection connection = service.connect()) {
      body = connection.ask(tile).body();
    }
    byte[] file = Connection.get(service.serve("same.png", body));
    rate(tile, body.length, WARM_UP_S);
    rate(file, body.length, WARM_UP_S);
    double[] tiles = new double[ROUNDS];
    double[] files = new double[ROUNDS];
    for (int round = 0; round < ROUNDS; round++) {
      tiles[round] = rate(tile, body.length, ROUND_S);
      files[round] = rate(file, body.length, ROUND_S);
    }
    return new Rates(body.length, median(tiles), median(files));
  }

  private double rate(byte[] request, int length, double seconds) throws Exception {
    ExecutorService threads = Executors.newFixedThreadPool(CONNECTIONS);
    try {
      long begun = System.nanoTime();
      long end = begun + (long) (seconds * 1e9);
      List<Callable<Integer>> readers = new ArrayList<>();
      for (int i = 0; i < CONNECTIONS; i++) {
        readers.add(() -> readUntil(end, request, length));
      }
      int count = 0;
      for (var reader : threads.invokeAll(readers)) {
        count += reader.get();
      }
      return count / ((System.nanoTime() - begun) / 1e9);
    } catch (ExecutionException e) {
      throw e.getCause() instanceof Exception cause ? cause : e;
    } finally {
      threads.shutdown();
    }
  }

  private int readUntil(long end, byte[] request, int length) throws IOException {
    int count = 0;
    try (Connection connection = service.connect()) {
      while (System.nanoTime() < end) {
        Connection.Response answer = connection.ask(request);
        if (answer.status() != 200 || answer.body().length != length) {
          throw new IOException("a read was answered " + answer.status() + " " + answer.fields());
        }
        count++;
      }
    }
    return count;
  }

  private static double median(double[] values) {
    double[] sorted = DoubleStream.of(values).sorted().toArray();
    int middle = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
  }
}
