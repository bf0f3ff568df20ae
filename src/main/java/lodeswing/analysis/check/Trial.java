package lodeswing.analysis.check;

import java.util.Optional;
import java.util.function.DoubleConsumer;
import java.util.function.Supplier;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.outcome.OutcomeFinders;
import lodeswing.core.rig.BenchLayout;

/** A rig under examination, its model and its landscape made when a line first asks for them. */
final class Trial {

  private final CheckedRig rig;
  private final CheckSpec spec;
  private final OutcomeFinders finders;
  private final Energies energies;
  private final Supplier<Landscape> maker;
  private final DoubleConsumer heard;
  private Optional<RigModel> model = Optional.empty();
  private Optional<ReleaseRegion> region = Optional.empty();
  private Optional<Landscape> landscape = Optional.empty();

  Trial(
      CheckedRig rig,
      CheckSpec spec,
      OutcomeFinders finders,
      Energies energies,
      Supplier<Landscape> maker,
      DoubleConsumer heard) {
    this.rig = rig;
    this.spec = spec;
    this.finders = finders;
    this.energies = energies;
    this.maker = maker;
    this.heard = heard;
  }

  CheckedRig rig() {
    return rig;
  }

  CheckSpec spec() {
    return spec;
  }

  OutcomeFinders finders() {
    return finders;
  }

  /** Told how far a line is, so that work that nobody wants ends. */
  DoubleConsumer heard() {
    return heard;
  }

  Optional<BenchLayout> bench() {
    return rig.layout() instanceof BenchLayout own ? Optional.of(own) : Optional.empty();
  }

  /** The rig on the bench, for lines that a textbook layout does not have. */
  BenchLayout onBench() {
    return bench().orElseThrow(() -> new IllegalStateException("the line is of a bench alone"));
  }

  RigModel model() {
    if (model.isEmpty()) {
      model = Optional.of(new RigModel(rig.layout(), energies));
    }
    return model.get();
  }

  ReleaseRegion region() {
    if (region.isEmpty()) {
      region = Optional.of(new ReleaseRegion(model(), spec.radius()));
    }
    return region.get();
  }

  Landscape landscape() {
    if (landscape.isEmpty()) {
      landscape = Optional.of(maker.get());
    }
    return landscape.get();
  }

  /** Error of the gap [m]. */
  double gapError() {
    return rig.around().gapError().orElse(CheckLimits.GAP_ERROR);
  }

  /** Weight of all that hangs [N]. */
  double weight() {
    BenchLayout bench = onBench();
    return bench.suspension().body().mass() * bench.gravity();
  }

  /** How many magnets have a label. */
  int labels() {
    return (int) rig.labelled().stream().filter(labelled -> labelled).count();
  }
}
