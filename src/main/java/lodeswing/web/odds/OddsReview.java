package lodeswing.web.odds;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lodeswing.analysis.odds.PartsTrial;
import lodeswing.core.chance.OddsSpec;
import lodeswing.core.chance.PartTolerances;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.statistics.IntervalRule;
import lodeswing.web.body.Body;
import lodeswing.web.body.FaultList;
import lodeswing.web.body.Numbers;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.limits.Limits;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;

/** What the shapes of a request for odds cannot see: whether its figures fit together. */
final class OddsReview {

  private final OddsRequest request;
  private final LayoutPlace place;
  private final FaultList faults = new FaultList();

  OddsReview(OddsRequest request, LayoutPlace place) {
    this.request = request;
    this.place = place;
  }

  /**
   * Refuses what cannot be answered, every fault at once, then what costs too much.
   *
   * @param sent the request as it was sent
   * @throws ProblemException {@code invalid-request} or {@code too-costly}
   */
  void check(Body sent, Limits limits) {
    request.hand().review(sent.has("release"), place, faults);
    parts(sent);
    counts();
    faults.refuseIfAny(ProblemCode.INVALID_REQUEST, "The request");
    cost(limits);
  }

  private String at(String member, String parameter) {
    return place == LayoutPlace.ADDRESS ? "?" + parameter : member;
  }

  private void parts(Body sent) {
    boolean asked = sent.flag("parts") || sent.has("tolerances");
    String at = sent.has("tolerances") ? "/tolerances" : at("/parts", "parts");
    if (asked && !request.bench()) {
      faults.add(at, "asks for parts, which a textbook layout does not have; leave it out");
    } else if (asked && request.rigs() == 0) {
      faults.add(at, "asks for the layout's tolerances, but it has none; give tolerances");
    } else {
      Optional<PartsTrial> trial = request.trial();
      trial.ifPresent(of -> tolerances(of, at));
    }
  }

  private void tolerances(PartsTrial trial, String at) {
    BenchLayout rig = trial.rig();
    PartTolerances tolerances = trial.tolerances();
    boolean list = at.equals("/tolerances");
    if (rig.gap() > 0 && tolerances.gap() >= rig.gap()) {
      faults.add(list ? at + "/gapMm" : at, "gapMm must be below the gap itself");
    }
    if (tolerances.remanence() >= 1) {
      faults.add(list ? at + "/remanencePercent" : at, "remanencePercent must be below 100");
    }
    if (!hangs(rig, tolerances.length()) || !hangs(rig, -tolerances.length())) {
      faults.add(list ? at + "/lengthMm" : at, "lengthMm must leave something to hang");
    }
  }

  private static boolean hangs(BenchLayout rig, double longer) {
    try {
      return rig.suspension().lengthened(longer).body().bobArm() > 0;
    } catch (IllegalArgumentException e) {
      return false;
    }
  }

  private void counts() {
    for (int i : request.countedTwice()) {
      String label = request.canonical().objects("counts").get(i).text("label");
      faults.add(
          at("/counts/" + i + "/label", "counts"),
          place == LayoutPlace.ADDRESS
              ? "has '" + label + "' twice; count it once"
              : "is counted already; count it once");
    }
    long tries = request.counts().values().stream().mapToLong(Long::longValue).sum();
    if (request.canonical().has("counts") && tries == 0) {
      faults.add(at("/counts", "counts"), "has no try at all");
    }
  }

  private void cost(Limits limits) {
    List<Fault> costly = new ArrayList<>();
    IntervalRule rule = request.rule();
    if (OddsSpec.mostReleases(request.width(), rule) > limits.oddsReleases()) {
      costly.add(
          new Fault(
              at("/width", "width"),
              "is "
                  + Numbers.shortest(request.width())
                  + ", which may take more than "
                  + limits.oddsReleases()
                  + " releases; raise it to "
                  + affordable(limits.oddsReleases(), rule)));
    }
    if (request.rigs() > limits.oddsRigs()) {
      costly.add(
          new Fault(
              at("/rigs", "rigs"), "is " + request.rigs() + "; lower it to " + limits.oddsRigs()));
    }
    if (!costly.isEmpty()) {
      throw new ProblemException(
          ProblemCode.TOO_COSTLY, "The odds ask for more than they may cost.", costly);
    }
  }

  private static String affordable(int releases, IntervalRule rule) {
    for (int thousandths = 1; thousandths < 1_000; thousandths++) {
      if (OddsSpec.mostReleases(thousandths / 1e3, rule) <= releases) {
        return String.format(Locale.ROOT, "%.3f", thousandths / 1e3);
      }
    }
    return "1";
  }
}
