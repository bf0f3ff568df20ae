package lodeswing.web.field;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleConsumer;
import lodeswing.analysis.field.EvenLines;
import lodeswing.analysis.field.FieldLine;
import lodeswing.analysis.field.Filings;
import lodeswing.analysis.field.PlateField;
import lodeswing.analysis.field.SpaceNulls;
import lodeswing.analysis.field.WeakSpotSearch;
import lodeswing.core.field.FieldGrid;
import lodeswing.core.field.Frame;
import lodeswing.core.field.Surface;
import lodeswing.core.integrate.lane.LaneProvider;
import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.job.Computation;
import lodeswing.job.Recipe;
import lodeswing.job.WorkCost;
import lodeswing.web.layout.LayoutStore;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The work behind pictures of the field, and how it is done again from its words. */
@Configuration(proxyBeanMethods = false)
class FieldComputations {

  private static final double MILLI = 1e-3;

  /** Length of a filing, in sides of the window. */
  private static final double FILING = 1.0 / 58;

  /** How far above the magnets places without any field are looked for: from, and to in halves. */
  private static final double NULLS_FROM = 5e-4;

  private static final double NULLS_TO = 1.5;

  /** Field that still has a direction [T]. */
  private static final double WEAKEST = 1e-10;

  private final LaneProvider lanes;

  FieldComputations(LaneProvider lanes) {
    this.lanes = lanes;
  }

  @Bean
  Recipe fieldRecipe(LayoutStore layouts) {
    return new Recipe(
        FieldRequest.KIND, words -> of(FieldRequest.of(layouts.get(words.get(0)), words)));
  }

  /** The work for a request. */
  Computation of(FieldRequest request) {
    return new Computation(
            request.key(),
            FieldRequest.KIND,
            request.url(),
            progress -> compute(request, progress::report).written())
        .remadeFrom(request.words().toArray(String[]::new))
        .costing(WorkCost.field(request.evaluations()));
  }

  private StoredField compute(FieldRequest request, DoubleConsumer progress) {
    PlateField plate = request.plate();
    Optional<WeakSpotSearch.Found> spots =
        request.subject().spots() && !isCut(request.subject())
            ? Optional.of(spots(request, plate, f -> progress.accept(0.5 * f)))
            : Optional.empty();
    DoubleConsumer rest = f -> progress.accept(0.5 + 0.5 * f);
    FieldSubject subject = request.subject();
    if (subject instanceof FieldSubject.Strength map) {
      FieldGrid grid = grid(request, plate, request.view().frame(map.side()), rest);
      return StoredField.map(spots, grid, map.inPlane());
    }
    if (subject instanceof FieldSubject.Lines lines) {
      return lines(request, plate, lines, spots, rest);
    }
    if (subject instanceof FieldSubject.Strewn strewn) {
      Filings filings =
          new Filings(
              plate,
              lanes,
              request.view().frame(2),
              request.view().surface(plate),
              2 * MILLI * request.view().halfWidth() * FILING);
      return StoredField.filings(spots, filings.strew(strewn.count(), strewn.seed(), rest));
    }
    double low = plate.highestTop() + NULLS_FROM;
    double high = low + NULLS_TO * MILLI * request.view().halfWidth();
    SpaceNulls nulls = new SpaceNulls(plate, lanes, request.view().frame(2), low, high, rest);
    return StoredField.spots(spots.orElseThrow(), nulls.run(), low, high);
  }

  private static boolean isCut(FieldSubject subject) {
    return subject instanceof FieldSubject.Lines lines && lines.turnDeg().isPresent();
  }

  /** Strengths at the places of a frame [T], for the ground of a picture; some milliseconds. */
  double[] strengths(FieldRequest request, Frame frame, boolean inPlane) {
    return grid(request, request.plate(), frame, done -> {}).strengths(inPlane);
  }

  private FieldGrid grid(
      FieldRequest request, PlateField plate, Frame frame, DoubleConsumer progress) {
    return FieldGrid.of(plate.sources(), lanes, frame, request.view().surface(plate), progress);
  }

  private WeakSpotSearch.Found spots(
      FieldRequest request, PlateField plate, DoubleConsumer progress) {
    FieldView view = request.view();
    return new WeakSpotSearch(plate, lanes, view.frame(2), view.surface(plate), progress).run();
  }

  private static StoredField lines(
      FieldRequest request,
      PlateField plate,
      FieldSubject.Lines lines,
      Optional<WeakSpotSearch.Found> spots,
      DoubleConsumer progress) {
    FieldView view = request.view();
    double apart = MILLI * lines.apartMm();
    List<PlacedMagnet> magnets = plate.layout().magnets();
    double[] u = new double[magnets.size()];
    double[] v = new double[magnets.size()];
    double[] b = new double[3];
    if (lines.turnDeg().isEmpty()) {
      Surface surface = view.surface(plate);
      for (int i = 0; i < u.length; i++) {
        // Beside the pole's middle, where the part in the plane has a direction.
        u[i] = magnets.get(i).centre().x() + 0.6 * magnets.get(i).magnet().planRadius();
        v[i] = magnets.get(i).centre().y() + 0.3 * magnets.get(i).magnet().planRadius();
      }
      EvenLines even =
          new EvenLines(
              (x, y, out) -> {
                plate.sources().field(x, y, surface.height(x, y), b);
                out[0] = b[0];
                out[1] = b[1];
              },
              view.frame(2),
              apart,
              WEAKEST,
              progress);
      return StoredField.lines(spots, even.run(u, v), 0);
    }
    CutPlane cut = CutPlane.of(view, lines.turnDeg().get());
    Frame window = view.cut(plate);
    for (int i = 0; i < u.length; i++) {
      u[i] = cut.along(magnets.get(i).centre().x(), magnets.get(i).centre().y());
      v[i] = magnets.get(i).centre().z() + 0.9 * magnets.get(i).magnet().halfHeight();
    }
    EvenLines even =
        new EvenLines(
            (s, z, out) -> {
              plate.sources().field(cut.x(s), cut.y(s), z, b);
              out[0] = cut.part(b);
              out[1] = b[2];
            },
            window,
            apart,
            WEAKEST,
            progress);
    List<FieldLine> drawn = even.run(u, v);
    double out = 0;
    for (FieldLine line : drawn) {
      for (int i = 0; i < line.count(); i += 4) {
        plate.sources().field(cut.x(line.u(i)), cut.y(line.u(i)), line.v(i), b);
        double size = Math.sqrt(b[0] * b[0] + b[1] * b[1] + b[2] * b[2]);
        out = size > 0 ? Math.max(out, Math.abs(cut.across(b)) / size) : out;
      }
    }
    return StoredField.lines(spots, drawn, out);
  }
}
