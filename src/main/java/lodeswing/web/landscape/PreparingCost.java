package lodeswing.web.landscape;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.rig.BenchLayout;
import lodeswing.web.body.Body;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.limits.Limits;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import org.springframework.stereotype.Component;

/** What making a layout ready will cost, told before it is begun. */
@Component
public final class PreparingCost {

  private static final int KNOWN_LAYOUTS = 10_000;
  private static final double MM = 1000;

  /** Gaps that are tried as a way out, as additions to the asked one [m]. */
  private static final double[] WIDER = {0.001, 0.002, 0.004, 0.007, 0.012, 0.02, 0.035, 0.06};

  private final Limits limits;
  private final Cache<String, Double> known =
      Caffeine.newBuilder().executor(Runnable::run).maximumSize(KNOWN_LAYOUTS).build();

  PreparingCost(Limits limits) {
    this.limits = limits;
  }

  /** The expected work, in evaluations of a potential. */
  public double of(LayoutDocument document) {
    return known.get(
        document.physicsKey(), key -> Math.rint(Landscape.expectedWork(document.layout())));
  }

  /** The expected work beside its limit, for a dry run. */
  public Body described(LayoutDocument document) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("preparingWork", of(document));
    members.put("preparingWorkLimit", limits.preparingWork());
    return Body.of(members);
  }

  /**
   * Refuses a layout that costs too much, saying what would not.
   *
   * @param place where the layout stands in the request
   * @throws ProblemException {@code too-costly}
   */
  public void check(LayoutDocument document, LayoutPlace place) {
    double work = of(document);
    if (work > limits.preparingWork()) {
      throw refusal(
          document,
          place,
          String.format(
              Locale.ROOT,
              "Making this layout ready would take %.2g evaluations of a magnet's potential; %.2g"
                  + " are allowed.",
              work,
              limits.preparingWork()));
    }
  }

  /** The problem of a layout that took more than was expected of it and than is allowed. */
  ProblemException ranOut(LayoutDocument document, LayoutPlace place) {
    return refusal(
        document,
        place,
        String.format(
            Locale.ROOT,
            "Making this layout ready takes more than the %.2g evaluations of a magnet's potential,"
                + " or the memory, that are allowed.",
            limits.preparingWork()));
  }

  private ProblemException refusal(LayoutDocument document, LayoutPlace place, String detail) {
    List<Fault> faults = new ArrayList<>();
    if (document.layout() instanceof BenchLayout bench) {
      faults.add(new Fault(place.of("/gapMm"), gap(bench)));
      if (bench.magnets().size() > 1) {
        faults.add(new Fault(place.of("/magnets"), magnets(bench)));
      }
    }
    return new ProblemException(ProblemCode.TOO_COSTLY, detail, faults);
  }

  private String gap(BenchLayout bench) {
    String asked = "gapMm is " + millimetres(bench.gap()) + "; ";
    for (double more : WIDER) {
      double gap = Math.ceil((bench.gap() + more) * MM) / MM;
      if (affordable(withGap(bench, gap))) {
        return asked + "raise it to " + millimetres(gap);
      }
    }
    return asked + "raise it by more than " + millimetres(WIDER[WIDER.length - 1]);
  }

  private String magnets(BenchLayout bench) {
    int all = bench.magnets().size();
    int few = 0;
    int many = all;
    while (many - few > 1) {
      int middle = (few + many) / 2;
      if (affordable(withMagnets(bench, middle))) {
        few = middle;
      } else {
        many = middle;
      }
    }
    String asked = "the layout has " + all + " magnets; ";
    return few > 0
        ? asked + "lower their number to " + few
        : asked + "fewer of them alone do not help: lower those that stand in the bob's way";
  }

  private boolean affordable(BenchLayout bench) {
    return Landscape.expectedWork(bench, limits.preparingWork()) <= limits.preparingWork();
  }

  private static BenchLayout withGap(BenchLayout b, double gap) {
    return new BenchLayout(
        b.suspension(), b.bob(), gap, b.magnets(), b.backing(), b.gravity(), b.loss());
  }

  private static BenchLayout withMagnets(BenchLayout b, int count) {
    return new BenchLayout(
        b.suspension(),
        b.bob(),
        b.gap(),
        b.magnets().subList(0, count),
        b.backing(),
        b.gravity(),
        b.loss());
  }

  private static String millimetres(double metres) {
    double mm = Math.rint(metres * MM * 1e3) / 1e3;
    return (mm == Math.rint(mm) ? Long.toString((long) mm) : Double.toString(mm)) + " mm";
  }
}
