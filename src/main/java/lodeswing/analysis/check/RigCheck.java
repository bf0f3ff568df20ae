package lodeswing.analysis.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleConsumer;
import java.util.function.Supplier;
import lodeswing.analysis.check.Judged.Way;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.motion.WorkExceededException;
import lodeswing.core.outcome.OutcomeFinders;
import lodeswing.core.rig.BenchLayout;

/**
 * Checks a rig line by line, and looks for each line that is not good for the smallest change of
 * one member that makes it so. A change is told only after the changed rig was checked again.
 */
public final class RigCheck {

  private final Trial base;
  private final Workshop workshop;
  private final Energies energies = new Energies();
  private final OutcomeFinders finders;
  private final DoubleConsumer heard;

  /**
   * A check.
   *
   * @param rig the rig
   * @param spec what is asked
   * @param workshop where it is changed
   * @param landscape makes the rig ready; called once at most, by lines that need it
   * @param finders find the ends of releases
   * @param heard told now and then that the work goes on; may throw to end it
   */
  public RigCheck(
      CheckedRig rig,
      CheckSpec spec,
      Workshop workshop,
      Supplier<Landscape> landscape,
      OutcomeFinders finders,
      DoubleConsumer heard) {
    this.workshop = workshop;
    this.finders = finders;
    this.heard = heard;
    this.base = new Trial(rig, spec, finders, energies, landscape, heard);
  }

  /**
   * Every line that the layout has.
   *
   * @param progress told the part done
   */
  public List<Finding> run(DoubleConsumer progress) {
    List<CheckLine> lines =
        CheckLine.all().stream()
            .filter(line -> base.bench().isPresent() || line.code().ofPlane())
            .toList();
    List<Finding> findings = new ArrayList<>();
    for (CheckLine line : lines) {
      findings.add(found(line));
      progress.accept((double) findings.size() / lines.size());
    }
    return findings;
  }

  /**
   * One line.
   *
   * @throws IllegalArgumentException where the layout does not have it
   */
  public Finding line(CheckCode code) {
    if (base.bench().isEmpty() && !code.ofPlane()) {
      throw new IllegalArgumentException("a textbook layout has no line " + code.word());
    }
    return CheckLine.all().stream()
        .filter(line -> line.code() == code)
        .map(this::found)
        .findFirst()
        .orElseThrow();
  }

  private Finding found(CheckLine line) {
    Judged judged = line.judge(base);
    Verdict verdict = judged.measure().verdict();
    boolean mend = verdict == Verdict.WATCH || verdict == Verdict.FAILS;
    return new Finding(
        line.code(), judged.measure(), mend ? mended(line, judged) : Optional.empty());
  }

  /** The first way that leads to good, by the smallest change on that way. */
  private Optional<Change> mended(CheckLine line, Judged judged) {
    for (Way way : judged.ways()) {
      heard.accept(0);
      Optional<Change> found =
          way.direction() == 0
              ? workshop.word(way.knob(), way.magnet()).filter(change -> passes(line, change))
              : figure(line, judged, way).map(change -> change);
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
  }

  private Optional<Change.OfFigure> figure(CheckLine line, Judged judged, Way way) {
    Optional<Setting> found = workshop.setting(way.knob(), way.magnet());
    if (found.isEmpty()) {
      return Optional.empty();
    }
    Setting setting = found.get();
    var search =
        new ChangeSearch(
            setting,
            way.direction() * setting.sense(),
            value ->
                trial(change(setting, value))
                    .map(changed -> room(line, changed))
                    .orElse(Double.NaN));
    return search
        .run(judged.margin(), value -> passes(line, change(setting, value)))
        .map(value -> change(setting, value));
  }

  private double room(CheckLine line, Trial changed) {
    try {
      return line.estimate(changed, base);
    } catch (WorkExceededException e) {
      return Double.NaN;
    }
  }

  private static Change.OfFigure change(Setting setting, double value) {
    return new Change.OfFigure(setting.pointer(), setting.from(), value);
  }

  private boolean passes(CheckLine line, Change change) {
    return trial(change).map(changed -> judgedGood(line, changed)).orElse(false);
  }

  /** A changed rig that takes too much to be made ready is no answer. */
  private static boolean judgedGood(CheckLine line, Trial changed) {
    try {
      return line.judge(changed).good();
    } catch (WorkExceededException e) {
      return false;
    }
  }

  private Optional<Trial> trial(Change change) {
    heard.accept(0);
    return workshop
        .with(change)
        .map(rig -> new Trial(rig, base.spec(), finders, energies, () -> landscape(rig), heard));
  }

  private Landscape landscape(CheckedRig rig) {
    return base.landscape()
        .underLossOf(rig.layout())
        .orElseGet(
            () ->
                rig.layout() instanceof BenchLayout
                    ? Landscape.loose(rig.layout(), base.spec().mostWork(), heard)
                    : Landscape.of(rig.layout()));
  }
}
