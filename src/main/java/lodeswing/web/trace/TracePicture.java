package lodeswing.web.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.analysis.trace.Samples;
import lodeswing.analysis.trace.TraceEvent;
import lodeswing.analysis.trace.TraceResult;
import lodeswing.core.magnet.Block;
import lodeswing.core.magnet.Magnet;
import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.core.magnet.Pole;
import lodeswing.core.magnet.Ring;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Layout;
import lodeswing.core.rig.TextbookLayout;
import lodeswing.core.rig.TextbookLayout.Attractor;
import lodeswing.figure.Drawing;
import lodeswing.figure.Measure;
import lodeswing.figure.Outline;
import lodeswing.figure.PathFigure;
import lodeswing.figure.PathPicture;
import lodeswing.figure.PathThinning;
import lodeswing.figure.PlateMagnet;
import lodeswing.figure.Trail;
import lodeswing.web.body.Body;
import lodeswing.web.restpoint.RestPlace;

/** The picture of a trace: what is handed to the figure. */
final class TracePicture {

  /** Thinning that no picture shows, as a share of the swing, where a path has too many samples. */
  private static final double INVISIBLE = 1e-4;

  private final TraceRequest request;
  private final TraceAnswers answers;
  private final TraceResult path;

  TracePicture(TraceRequest request, TraceAnswers answers) {
    this.request = request;
    this.answers = answers;
    this.path = answers.stored().path();
  }

  Drawing drawing() {
    return PathFigure.draw(
        new PathPicture(
            request.title().orElse("The path of the bob"),
            answers.words().notes(),
            request.bench() ? Measure.BENCH : Measure.TEXTBOOK,
            plate(),
            magnets(request.layout().layout()),
            List.of(trail())));
  }

  private Optional<Outline> plate() {
    return request.layout().canonical().findObject("plate").flatMap(TracePicture::plate);
  }

  private static Optional<Outline> plate(Body plate) {
    OptionalDouble width = plate.findNumber("widthMm");
    if (width.isEmpty()) {
      return Optional.empty();
    }
    double metres = width.getAsDouble() * 1e-3;
    boolean round = plate.findText("shape").filter("round"::equals).isPresent();
    return Optional.of(
        round ? new Outline.Round(metres / 2) : new Outline.Oblong(metres, metres, 0));
  }

  private List<PlateMagnet> magnets(Layout layout) {
    List<PlateMagnet> magnets = new ArrayList<>();
    if (layout instanceof BenchLayout bench) {
      for (PlacedMagnet placed : bench.magnets()) {
        magnets.add(
            new PlateMagnet(
                magnets.size() + 1,
                placed.centre().x(),
                placed.centre().y(),
                outline(placed),
                placed.poleUp() == Pole.NORTH ? PlateMagnet.Face.NORTH : PlateMagnet.Face.SOUTH,
                label(magnets.size())));
      }
    } else if (layout instanceof TextbookLayout textbook) {
      for (Attractor attractor : textbook.magnets()) {
        magnets.add(
            new PlateMagnet(
                magnets.size() + 1,
                attractor.x(),
                attractor.y(),
                new Outline.Spot(),
                attractor.strength() >= 0 ? PlateMagnet.Face.ATTRACTS : PlateMagnet.Face.REPELS,
                label(magnets.size())));
      }
    }
    return magnets;
  }

  private String label(int index) {
    return request.layout().labels().get(index).orElse("");
  }

  private static Outline outline(PlacedMagnet placed) {
    Magnet magnet = placed.magnet();
    if (magnet instanceof Ring ring) {
      return new Outline.Annulus(ring.innerRadius(), ring.outerRadius());
    }
    if (magnet instanceof Block block) {
      return new Outline.Oblong(block.length(), block.width(), placed.turn());
    }
    return magnet.planRadius() > 0 ? new Outline.Round(magnet.planRadius()) : new Outline.Spot();
  }

  private Trail trail() {
    Samples samples = path.samples();
    double unit = request.unit();
    List<Trail.Happening> happenings = new ArrayList<>();
    for (TraceEvent event : path.events()) {
      if (event.kind().endsModel() || event.kind() == TraceEvent.Kind.STUCK) {
        happenings.add(new Trail.Happening(event.time(), TraceWords.text(event.kind())));
      }
    }
    return new Trail(
        samples(samples),
        "",
        new Trail.Horizons(
            path.trustedUntil(), path.foretoldUntil(), path.sealedAt(), path.settledAt()),
        happenings,
        new Trail.Start(
            request.release().get(0) * unit,
            request.release().get(1) * unit,
            request.release().get(2) * unit,
            request.release().get(3) * unit),
        end());
  }

  private static Trail.Samples samples(Samples samples) {
    double[] t = samples.times();
    if (t.length <= Trail.Samples.MOST) {
      return new Trail.Samples(t, samples.x(), samples.y());
    }
    double swing = 0;
    for (double x : samples.x()) {
      swing = Math.max(swing, Math.abs(x));
    }
    int[] kept = PathThinning.indices(t, samples.x(), samples.y(), INVISIBLE * swing);
    return new Trail.Samples(pick(t, kept), pick(samples.x(), kept), pick(samples.y(), kept));
  }

  private static double[] pick(double[] values, int[] kept) {
    double[] picked = new double[kept.length];
    for (int i = 0; i < kept.length; i++) {
      picked[i] = values[kept[i]];
    }
    return picked;
  }

  private Optional<Trail.End> end() {
    if (path.restPoint().isEmpty()) {
      return Optional.empty();
    }
    RestPlace place = answers.stored().places().get(path.restPoint().getAsInt());
    return Optional.of(new Trail.End(place.x(), place.y(), answers.words().outcome()));
  }
}
