package lodeswing.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.core.geometry.PathCurve;

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

  /** Four long blocks, two of them turned, and no path. */
  public static PathPicture bars() {
    List<PlateMagnet> magnets = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      magnets.add(
          new PlateMagnet(
              i + 1,
              i % 2 == 0 ? -0.045 : 0.045,
              i < 2 ? -0.045 : 0.045,
              new Outline.Oblong(0.06, 0.012, i < 2 ? 0 : 0.6),
              PlateMagnet.Face.SOUTH,
              List.of("Tide", "Dune", "Reef", "Grove").get(i)));
    }
    return new PathPicture(
        "Bars",
        List.of(),
        Measure.BENCH,
        Optional.of(new Outline.Oblong(0.2, 0.2, 0)),
        magnets,
        List.of());
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

  /** The path of {@link #threeStations} with so many knots, and nothing else. */
  public static PathPicture pathAlone(int samples) {
    return new PathPicture(
        "", List.of(), Measure.TEXTBOOK, Optional.empty(), List.of(), List.of(trail(samples, "")));
  }

  private static Trail trail(int samples, String end) {
    double[] t = new double[samples];
    double[][] at = new double[4][samples];
    for (int i = 0; i < samples; i++) {
      t[i] = 20.0 * i / Math.max(1, samples - 1);
      double fade = Math.exp(-0.15 * t[i]);
      double across = 4.1 * t[i];
      double along = 5.3 * t[i] + 0.4;
      at[0][i] = 0.045 * (1 - fade) + 0.08 * fade * Math.cos(across);
      at[1][i] = 0.07 * fade * Math.sin(along);
      at[2][i] =
          0.15 * 0.045 * fade - 0.08 * fade * (0.15 * Math.cos(across) + 4.1 * Math.sin(across));
      at[3][i] = 0.07 * fade * (5.3 * Math.cos(along) - 0.15 * Math.sin(along));
    }
    return new Trail(
        new PathCurve(t, at),
        "",
        new Trail.Horizons(
            OptionalDouble.of(9.5),
            OptionalDouble.of(4.25),
            OptionalDouble.of(7.42),
            OptionalDouble.of(16.1)),
        List.of(new Trail.Happening(3.31, "touched magnet 2")),
        new Trail.Start(at[0][0], at[1][0], 0.1, -0.05),
        Optional.of(new Trail.End(at[0][samples - 1], at[1][samples - 1], end, "at " + end)));
  }
}
