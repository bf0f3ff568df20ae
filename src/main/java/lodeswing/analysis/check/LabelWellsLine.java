package lodeswing.analysis.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import lodeswing.analysis.check.Judged.Way;
import lodeswing.core.rest.ScanRegion;
import lodeswing.core.rest.WellProbe;

/** Whether each label has a rest point over its magnet. */
record LabelWellsLine() implements CheckLine {

  private static final Band NONE = Band.atMost(0, 1);

  @Override
  public CheckCode code() {
    return CheckCode.LABELS_WITHOUT_WELL;
  }

  @Override
  public Judged judge(Trial trial) {
    if (trial.labels() == 0) {
      return noLabels(trial);
    }
    Set<Integer> owners = new TreeSet<>();
    trial
        .landscape()
        .restPoints()
        .list()
        .forEach(point -> point.surroundings().owner().ifPresent(owners::add));
    List<Integer> without = new ArrayList<>();
    for (int i = 0; i < trial.rig().labelled().size(); i++) {
      if (trial.rig().labelled().get(i) && !owners.contains(i)) {
        without.add(i);
      }
    }
    List<Integer> repelling = without.stream().filter(trial.model()::repels).toList();
    List<Way> ways = new ArrayList<>();
    if (repelling.size() == 1) {
      ways.add(Way.word(Knob.POLE, repelling.get(0)));
    } else if (repelling.isEmpty()) {
      ways.add(Way.down(Knob.GAP));
      ways.add(Way.up(Knob.GAP));
      ways.add(Way.down(Knob.MASS));
      ways.add(Way.down(Knob.PLANE_HEIGHT));
    }
    int first = without.isEmpty() ? -1 : without.get(0);
    return Judged.by(
        NONE,
        without.size(),
        repelling.isEmpty() ? Cause.WELLS_OF_LABELS : Cause.LABEL_REPELS,
        ways,
        trial.labels(),
        repelling.isEmpty() ? first : repelling.get(0));
  }

  static Judged noLabels(Trial trial) {
    boolean bare = trial.rig().layout().magnetCount() == 0;
    return Judged.unknown(
        OptionalDouble.empty(),
        bare ? Cause.NOTHING_PULLS : Cause.NO_LABELS,
        bare ? Needs.magnets(trial) : List.of("/magnets/0/label"));
  }

  /** Creeps downhill from each label's magnet; the landscape judges what that finds. */
  @Override
  public double estimate(Trial changed, Trial base) {
    RigModel model = changed.model();
    WellProbe probe = probe(model);
    for (int i = 0; i < changed.rig().labelled().size(); i++) {
      if (changed.rig().labelled().get(i)) {
        ScanRegion.MagnetPlace place = model.magnets().get(i);
        Optional<double[]> well = model.state(place.x(), place.y()).flatMap(probe::below);
        int magnet = i;
        if (!well.map(q -> model.owner(q[0], q[1]) == magnet).orElse(false)) {
          return -1;
        }
      }
    }
    return 0;
  }

  static WellProbe probe(RigModel model) {
    return new WellProbe(model.motion(), model.detail() / model.arm(0, 0));
  }
}
