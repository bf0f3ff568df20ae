package lodeswing.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Scenes that the tests of drawings and of their writers share. */
public final class PictureScenes {
  private PictureScenes() {}

  /** Three stations on a round plate, one path with every mark. */
  public static PathPicture threeStations(String... labels) {
    List<PlateMagnet> magnets = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      double angle = 2 * Math.PI * i / 3;
      magnets.add(
          new PlateMagnet(
              i + 1,
              0.045 * Math.cos(angle),
              0.045 * Math.sin(angle),
              i == 0
                  ? new Outline.Round(0.0125)
                  : i == 1 ? new Outline.Annulus(0.005, 0.0125) : new Outline.Oblong(0.03, 0.01, 1),
              i == 1 ? PlateMagnet.Face.NORTH : PlateMagnet.Face.SOUTH,
              labels[i]));
    }
    return new PathPicture(
        "Which station first?",
        List.of("Gap 25 mm."),
        Measure.BENCH,
        Optional.of(new Outline.Round(0.1)),
        magnets,
        List.of(trail(2_000, labels[0])));
  }

  /** So many small magnets in rows. */
  public static PathPicture manyStations(int count) {
    List<PlateMagnet> magnets = new ArrayList<>();
    int side = (int) Math.ceil(Math.sqrt(count));
    for (int i = 0; i < count; i++) {
      int row = i / side;
      magnets.add(
          new PlateMagnet(
              i + 1,
              0.012 * (i % side - side / 2.0),
              0.012 * (row - side / 2.0),
              new Outline.Round(0.005),
              i % 2 == 0 ? PlateMagnet.Face.NORTH : PlateMagnet.Face.SOUTH,
              "Station " + i));
    }
    return new PathPicture(
        "Many", List.of(), Measure.BENCH, Optional.empty(), magnets, List.of(trail(2_000, "x")));
  }

  /** The path of {@link #threeStations} with so many samples, and nothing else. */
  public static PathPicture pathAlone(int samples) {
    return new PathPicture(
        "", List.of(), Measure.TEXTBOOK, Optional.empty(), List.of(), List.of(trail(samples, "")));
  }

  private static Trail trail(int samples, String end) {
    double[] t = new double[samples];
    double[] x = new double[samples];
    double[] y = new double[samples];
    for (int i = 0; i < samples; i++) {
      t[i] = 20.0 * i / Math.max(1, samples - 1);
      double fade = Math.exp(-0.15 * t[i]);
      x[i] = 0.045 * (1 - fade) + 0.08 * fade * Math.cos(4.1 * t[i]);
      y[i] = 0.07 * fade * Math.sin(5.3 * t[i] + 0.4);
    }
    return new Trail(
        new Trail.Samples(t, x, y),
        "",
        new Trail.Horizons(
            OptionalDouble.of(9.5),
            OptionalDouble.of(4.25),
            OptionalDouble.of(7.42),
            OptionalDouble.of(16.1)),
        List.of(new Trail.Happening(3.31, "touched magnet 2")),
        new Trail.Start(x[0], y[0], 0.1, -0.05),
        Optional.of(new Trail.End(x[samples - 1], y[samples - 1], end)));
  }
}
