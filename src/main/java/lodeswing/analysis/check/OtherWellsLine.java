package lodeswing.analysis.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lodeswing.analysis.check.Judged.Way;
import lodeswing.core.rest.RestPoint;
import lodeswing.core.rest.WellProbe;

/** Whether the bob can come to rest where nothing is written. */
record OtherWellsLine() implements CheckLine {

  /** More wells than these no single change takes away. */
  private static final int MENDED = 3;

  private static final Band NONE = Band.atMost(0, 1);

  @Override
  public CheckCode code() {
    return CheckCode.WELLS_WITHOUT_LABEL;
  }

  @Override
  public Judged judge(Trial trial) {
    if (trial.labels() == 0) {
      return LabelWellsLine.noLabels(trial);
    }
    List<RestPoint> all = trial.landscape().restPoints().list();
    List<RestPoint> others = others(trial);
    if (others.isEmpty()) {
      return Judged.by(NONE, 0, Cause.ALL_WELLS_LABELLED, List.of(), all.size());
    }
    RestPoint deepest = others.get(0);
    for (RestPoint other : others) {
      deepest = other.barrier().height() > deepest.barrier().height() ? other : deepest;
    }
    double usual =
        all.stream()
            .filter(point -> !others.contains(point))
            .mapToDouble(point -> point.barrier().height())
            .max()
            .orElse(0);
    List<Way> ways = new ArrayList<>();
    int over = deepest.surroundings().owner().orElse(-1);
    if (over >= 0) {
      ways.add(Way.word(Knob.LABEL, over));
    }
    if (others.size() <= MENDED) {
      ways.add(Way.down(Knob.GAP));
      ways.add(Way.down(Knob.MASS));
      ways.add(Way.up(Knob.GAP));
      ways.add(Way.down(Knob.PLANE_HEIGHT));
    }
    Judged judged =
        Judged.by(
            NONE,
            others.size(),
            Cause.WELLS_AND_LABELS,
            ways,
            all.size(),
            deepest.x(),
            deepest.y(),
            over);
    boolean shallow = deepest.barrier().height() < CheckLimits.SHALLOW_WELL * usual;
    return shallow ? judged.as(Verdict.WATCH) : judged;
  }

  private static List<RestPoint> others(Trial trial) {
    return trial.landscape().restPoints().list().stream()
        .filter(
            point ->
                point.surroundings().owner().isEmpty()
                    || !trial.rig().labelled().get(point.surroundings().owner().getAsInt()))
        .toList();
  }

  /** Creeps downhill from where the wells were. */
  @Override
  public double estimate(Trial changed, Trial base) {
    RigModel model = changed.model();
    WellProbe probe = LabelWellsLine.probe(model);
    for (RestPoint other : others(base)) {
      Optional<double[]> well = model.state(other.x(), other.y()).flatMap(probe::below);
      int owner = well.map(q -> model.owner(q[0], q[1])).orElse(-1);
      if (well.isPresent() && (owner < 0 || !changed.rig().labelled().get(owner))) {
        return -1;
      }
    }
    return 0;
  }
}
