package lodeswing.benchmark;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.magnet.BobEnergy;
import lodeswing.core.magnet.MagnetArray;
import lodeswing.core.motion.BenchMotion;
import lodeswing.core.motion.MagnetEnergy;
import lodeswing.core.motion.Motion;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Layout;
import lodeswing.core.rig.Release;
import lodeswing.web.layout.LayoutDocument;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Force evaluations a release on the sample layout at equal measured error: a table of contenders
 * and errors, all on the service's table of the magnets' energy.
 *
 * <p>24 releases from rest within 120 mm, 3 s; an error is a geometric mean in radians.
 */
public final class EvaluationCountReport {

  private static final double DURATION = 3;
  private static final double WIDEST = 0.12;
  private static final List<String> CONTENDERS =
      List.of(
          "ours",
          "CM DP853",
          "CM DP54",
          "CM HH54",
          "CM GBS",
          "CM AB4",
          "CM AB6",
          "CM AB7",
          "CM AM4",
          "CM AM6",
          "CM AM7",
          "HP DP853",
          "HP DP54",
          "HP HH54",
          "HP GBS",
          "HP AB4",
          "HP AB6",
          "HP AB7",
          "HP AM4",
          "HP AM6",
          "HP AM7");
  private static final double[] ERRORS = {1e-4, 1e-5, 1e-6, 1e-7, 1e-8, 1e-9};

  private EvaluationCountReport() {}

  /** Prints the report; with the argument "exact" also for the energy without a table. */
  public static void main(String[] arguments) throws IOException {
    Landscape landscape = Landscape.of(sample());
    print("table of the energy", landscape.motion(), 24);
    if (List.of(arguments).contains("exact")) {
      print("exact energy", exact((BenchLayout) landscape.layout()), 6);
    }
  }

  private static Layout sample() throws IOException {
    String name = "/sample-layouts/three-stations.json";
    try (InputStream in =
        Objects.requireNonNull(EvaluationCountReport.class.getResourceAsStream(name))) {
      JsonNode sample = JsonMapper.shared().readTree(in);
      byte[] body = sample.get("layout").toString().getBytes(StandardCharsets.UTF_8);
      return LayoutDocument.read(body).layout();
    }
  }

  private static Motion exact(BenchLayout layout) {
    BenchLayout.BobMagnet bob = layout.bob().orElseThrow();
    BobEnergy energy =
        BobEnergy.of(
            bob.magnet(), bob.poleDown(), new MagnetArray(layout.magnets(), layout.backing()));
    MagnetEnergy magnets =
        new MagnetEnergy(energy, layout.suspension().body(), layout.axisHeight());
    return BenchMotion.amongMagnets(layout, magnets, (beta, alpha) -> 0);
  }

  private static double[][] releases(Motion motion, int count) {
    Random random = new Random(5);
    double[][] releases = new double[count][];
    for (int i = 0; i < count; i++) {
      double angle = 2 * Math.PI * random.nextDouble();
      double radius = WIDEST * Math.sqrt(random.nextDouble());
      Release release = new Release(radius * Math.cos(angle), radius * Math.sin(angle), 0, 0);
      releases[i] = motion.toState(release).orElseThrow();
    }
    return releases;
  }

  private static void print(String title, Motion motion, int count) {
    AccuracyMatch match = new AccuracyMatch(motion, releases(motion, count), DURATION);
    System.out.printf("| %s |", title);
    for (double error : ERRORS) {
      System.out.printf(" %.0e |", error);
    }
    System.out.printf("%n|---|%s%n", "---:|".repeat(ERRORS.length));
    for (String name : CONTENDERS) {
      System.out.printf("| %s |", name);
      for (double evaluations : match.evaluations(Contender.of(name, motion), ERRORS)) {
        System.out.print(Double.isNaN(evaluations) ? " - |" : " %.0f |".formatted(evaluations));
      }
      System.out.println();
    }
  }
}
