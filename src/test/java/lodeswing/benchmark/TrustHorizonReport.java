package lodeswing.benchmark;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lodeswing.analysis.trace.TrialLayouts;
import lodeswing.analysis.trace.TrustTrial;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Layout;

/**
 * The trust horizon on 504 releases of eight layouts against runs at a hundredfold tighter
 * tolerance, on the plane idealisation with little and no loss, and against the exact energy.
 */
public final class TrustHorizonReport {

  private static final int RELEASES = 63;
  private static final int EXACT_RELEASES = 40;

  private TrustHorizonReport() {}

  /** Prints the report. */
  public static void main(String[] args) {
    Map<String, Layout> eight = new LinkedHashMap<>();
    for (String name :
        List.of(
            "three-stations",
            "turned-centre",
            "closed-doors",
            "kitchen-drawer",
            "y-cord",
            "one-well",
            "uneven-coast",
            "heavy-bar")) {
      eight.put(name, TrialLayouts.sample(name));
    }
    List<TrustTrial.Outcome> all = new ArrayList<>();
    eight.forEach((name, layout) -> all.addAll(trial(name, layout)));
    System.out.println(TrustTrial.line("all eight", all));
    trial("three-stations, friction", TrialLayouts.withFriction("three-stations", 2e-5));
    trial("paper-triangle", TrialLayouts.sample("paper-triangle"));
    trial("paper-triangle, drag 0.01", TrialLayouts.triangle(0.01));
    trial("paper-triangle, no drag", TrialLayouts.triangle(0));
    for (String name : List.of("three-stations", "uneven-coast")) {
      BenchLayout bench = TrialLayouts.bench(name);
      TrustTrial trial = new TrustTrial(Landscape.of(bench), TrialLayouts.exactMotion(bench));
      System.out.println(TrustTrial.line(name + ", exact", trial.releases(EXACT_RELEASES, 11)));
    }
  }

  private static List<TrustTrial.Outcome> trial(String name, Layout layout) {
    Landscape landscape = Landscape.of(layout);
    List<TrustTrial.Outcome> outcomes =
        new TrustTrial(landscape, landscape.motion()).releases(RELEASES, 7);
    System.out.println(TrustTrial.line(name, outcomes));
    return outcomes;
  }
}
