package lodeswing.web.tuning;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import lodeswing.core.chance.OddsSpec;
import lodeswing.web.body.Body;
import lodeswing.web.body.FaultList;
import lodeswing.web.body.JsonPointer;
import lodeswing.web.body.NearestName;
import lodeswing.web.body.Numbers;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.limits.Limits;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;

/** What the shapes of a request for a tuning cannot see: whether its figures fit together. */
final class TuningReview {

  /** How far the sum of the wanted chances may be from 1: thirds to three digits are off by it. */
  private static final double SUM_ROOM = 2e-3;

  private final TuningRequest request;
  private final LayoutPlace place;
  private final FaultList faults = new FaultList();

  TuningReview(TuningRequest request, LayoutPlace place) {
    this.request = request;
    this.place = place;
  }

  /**
   * Refuses what cannot be answered, every fault at once.
   *
   * @param sent the request as it was sent
   * @throws ProblemException {@code invalid-request}
   */
  void check(Body sent) {
    request.hand().review(sent.has("release"), place, faults);
    labels();
    wanted();
    move();
    if (request.canonical().number("confirmSeed") == request.canonical().number("seed")) {
      faults.add("/confirmSeed", "is the seed of the search itself; give another one");
    }
    faults.refuseIfAny(ProblemCode.INVALID_REQUEST, "The request");
  }

  private void labels() {
    if (request.labels().isEmpty()) {
      faults.add(
          place.of("/magnets"),
          "has no label at all; give the magnets labels, for it is their odds that are tuned");
    }
  }

  private void wanted() {
    Body wanted = request.canonical().object("wanted");
    if (wanted.text("kind").equals("fair")) {
      return;
    }
    List<String> labels = request.labels();
    Set<String> seen = new HashSet<>();
    double sum = 0;
    List<Body> lines = wanted.objects("chances");
    for (int i = 0; i < lines.size(); i++) {
      String label = lines.get(i).text("label");
      String at = JsonPointer.element("/wanted/chances", i) + "/label";
      if (!labels.contains(label)) {
        faults.add(at, "is no label of this layout; " + meant(label, labels));
      } else if (!seen.add(label)) {
        faults.add(at, "has a chance already; give it once");
      }
      sum += lines.get(i).number("chance");
    }
    if (Math.abs(sum - 1) > SUM_ROOM) {
      faults.add("/wanted/chances", "sum to " + Numbers.plain(sum) + "; must sum to 1");
    }
  }

  private static String meant(String name, List<String> known) {
    return NearestName.find(name, known)
        .map(near -> "did you mean \"" + near + "\"?")
        .orElse("labels are " + String.join(", ", known.subList(0, Math.min(20, known.size()))));
  }

  private void move() {
    Body move = request.move();
    boolean whole = true;
    for (String part : List.of("places", "strength")) {
      if (move.has(part)) {
        whole &= names(move.object(part), "/move/" + part + "/magnets");
      }
    }
    for (String part : List.of("places", "release")) {
      if (move.has(part) && move.object(part).number("within") < move.object(part).number("step")) {
        Body of = move.object(part);
        faults.add(
            "/move/" + part + "/within",
            "is "
                + Numbers.plain(of.number("within"))
                + ", less than one step of "
                + Numbers.plain(of.number("step"))
                + "; nothing can move");
      }
    }
    if (move.has("gap")) {
      gap(move.object("gap"));
    }
    if (move.has("strength") && whole) {
      stock(move.object("strength"));
    }
    if (move.members().isEmpty()) {
      faults.add("/move", "names nothing that may move: places, gap, strength or release");
    } else if (faults.isEmpty() && new WorkBench(request).figures() == 0) {
      faults.add("/move", "leaves nothing to move: there are no magnets");
    }
  }

  private boolean names(Body part, String at) {
    List<String> names = part.texts("magnets");
    int count = request.layout().labels().size();
    boolean all = true;
    for (int i = 0; i < names.size(); i++) {
      String name = names.get(i);
      boolean known = false;
      for (int m = 0; m < count && !known; m++) {
        known = request.named(m, name);
      }
      if (!known) {
        faults.add(
            JsonPointer.element(at, i),
            "is neither a label nor a number of a magnet; " + meant(name, request.labels()));
        all = false;
      }
    }
    return all;
  }

  private void gap(Body gap) {
    if (!request.bench()) {
      faults.add(
          "/move/gap", "asks for a gap, which a textbook layout does not have; leave it out");
      return;
    }
    double own = request.layout().canonical().number("gapMm");
    double least = gap.number("leastMm");
    double most = gap.number("mostMm");
    if (least > most) {
      faults.add(
          "/move/gap/leastMm",
          "is " + Numbers.plain(least) + "; must be at most mostMm, " + Numbers.plain(most));
    } else if (own < least || own > most) {
      faults.add(
          "/move/gap",
          "leaves out the layout's own gap of " + Numbers.plain(own) + " mm; include it");
    } else if (most - least < gap.number("step")) {
      faults.add("/move/gap/step", "is wider than the bounds leave room for; nothing can move");
    }
  }

  private void stock(Body strength) {
    List<Body> entries = strength.objects("stock");
    List<Body> magnets = request.layout().canonical().objects("magnets");
    for (int i = 0; i < entries.size(); i++) {
      String at = JsonPointer.element("/move/strength/stock", i);
      if (entries.get(i).members().isEmpty()) {
        faults.add(at, "names no figure");
        continue;
      }
      if (entries.get(i).has("grade") && entries.get(i).has("remanenceT")) {
        faults.add(at, "has grade and remanenceT; give one of them");
        continue;
      }
      for (int magnet : request.magnets(strength)) {
        Body single = WorkBench.stocked(magnets.get(magnet), entries.get(i));
        String fault = faultOf(single);
        if (!fault.isEmpty()) {
          faults.add(at, "does not fit " + request.name(magnet) + ": " + fault);
          break;
        }
      }
    }
  }

  /** What is wrong with a magnet by itself, alone on the plate; empty where nothing is. */
  private String faultOf(Body magnet) {
    Body alone = request.layout().canonical().with("magnets", List.of(magnet));
    try {
      LayoutDocument.ofCanonical(alone.toJson().getBytes(StandardCharsets.UTF_8));
      return "";
    } catch (ProblemException e) {
      return e.code() == ProblemCode.INVALID_REQUEST
          ? e.faults().stream().findFirst().map(TuningReview::told).orElse("it has a fault")
          : "";
    }
  }

  private static String told(Fault fault) {
    return fault.pointer().substring(fault.pointer().lastIndexOf('/') + 1) + " " + fault.detail();
  }

  /**
   * Refuses what costs too much.
   *
   * @throws ProblemException {@code too-costly}
   */
  void checkCost(TuningComputations computations, Limits limits) {
    List<Fault> costly = new ArrayList<>();
    int figures = new WorkBench(request).figures();
    if (figures > limits.tuningFigures()) {
      costly.add(
          new Fault(
              "/move",
              "lets "
                  + figures
                  + " figures move; lower them to "
                  + limits.tuningFigures()
                  + ": name fewer magnets, a place has two figures"));
    }
    int releases = OddsSpec.mostReleases(request.width(), request.rule());
    if (releases > limits.oddsReleases()) {
      costly.add(
          new Fault(
              "/width",
              "is "
                  + Numbers.shortest(request.width())
                  + ", which may take more than "
                  + limits.oddsReleases()
                  + " releases for each layout; raise it"));
    } else if (computations.cost(request).all() > limits.tuningReleases()) {
      costly.add(new Fault("/candidates", candidates(computations, limits)));
    }
    if (!costly.isEmpty()) {
      throw new ProblemException(
          ProblemCode.TOO_COSTLY, "The tuning asks for more than it may cost.", costly);
    }
  }

  private String candidates(TuningComputations computations, Limits limits) {
    int few = TuningShapes.FEWEST_CANDIDATES - 1;
    int many = request.candidates();
    while (many - few > 1) {
      int middle = (few + many) / 2;
      TuningRequest fewer =
          new TuningRequest(
              request.layout(),
              request.canonical().with("candidates", (double) middle),
              request.revision());
      if (computations.cost(fewer).all() <= limits.tuningReleases()) {
        few = middle;
      } else {
        many = middle;
      }
    }
    return few >= TuningShapes.FEWEST_CANDIDATES
        ? "is " + request.candidates() + "; lower it to " + few
        : "cannot be lowered enough: making this layout ready costs too much for each candidate;"
            + " use fewer magnets, fewer answers or a wider gap";
  }
}
