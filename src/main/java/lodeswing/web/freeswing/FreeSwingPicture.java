package lodeswing.web.freeswing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.core.geometry.PathCurve;
import lodeswing.core.outcome.PathEnd;
import lodeswing.core.rig.Release;
import lodeswing.figure.AlternativeText;
import lodeswing.figure.Drawing;
import lodeswing.figure.Measure;
import lodeswing.figure.PathFigure;
import lodeswing.figure.PathPicture;
import lodeswing.figure.Trail;
import lodeswing.web.plate.PlateMap;

/** The picture of a free swing: what is handed to the figure. */
final class FreeSwingPicture {

  private static final String ALONE = "free swing, without magnets";
  private static final String BESIDE = "free swing without magnets, and the path among them";

  private final FreeSwingRequest request;
  private final SwingWords words;
  private final StoredSwing stored;

  FreeSwingPicture(FreeSwingRequest request, SwingWords words, StoredSwing stored) {
    this.request = request;
    this.words = words;
    this.stored = stored;
  }

  Drawing drawing() {
    PlateMap plate = new PlateMap(request.layout());
    boolean beside = stored.second().isPresent();
    List<Trail> trails = new ArrayList<>();
    Trail free =
        trail(
            beside ? "free" : "",
            stored.free().curve(),
            OptionalDouble.empty(),
            stored.free().end(),
            OptionalDouble.empty());
    trails.add(beside ? free.slender() : free);
    stored
        .second()
        .ifPresent(
            path ->
                trails.add(
                    trail(
                        "magnets",
                        path.curve(),
                        path.trustedUntil(),
                        path.end(),
                        stored.parting().map(p -> p.at()).orElse(OptionalDouble.empty()))));
    String what = beside ? BESIDE : ALONE;
    String title = request.layout().heading(what);
    Drawing drawn =
        PathFigure.draw(
            new PathPicture(
                title,
                captions(),
                request.bench() ? Measure.BENCH : Measure.TEXTBOOK,
                beside ? plate.outline() : Optional.empty(),
                beside ? plate.magnets() : List.of(),
                trails));
    return new Drawing(
        drawn.viewBox(),
        drawn.nominalWidth(),
        drawn.shapes(),
        drawn.legend(),
        new AlternativeText("en", title, description(drawn)));
  }

  private List<String> captions() {
    List<String> captions = new ArrayList<>();
    captions.add(words.sentence());
    captions.add(words.notes().get(0));
    return captions;
  }

  /** The result first; what the figure says of two paths, their magnets among it, after it. */
  private String description(Drawing drawn) {
    String own = words.sentence() + " " + String.join(" ", words.notes());
    return stored.second().isPresent() ? own + " " + drawn.alternative().description() : own;
  }

  private Trail trail(
      String name,
      PathCurve curve,
      OptionalDouble trustedUntil,
      Optional<PathEnd> end,
      OptionalDouble partedAt) {
    OptionalDouble none = OptionalDouble.empty();
    Release start = request.start();
    List<Trail.Happening> happenings = new ArrayList<>();
    partedAt.ifPresent(
        time -> happenings.add(new Trail.Happening(time, "parts from the free path")));
    end.ifPresent(e -> happenings.add(new Trail.Happening(e.time(), SwingWords.text(e))));
    return new Trail(
        curve,
        name,
        new Trail.Horizons(trustedUntil, none, none, none),
        happenings,
        new Trail.Start(start.x(), start.y(), start.vx(), start.vy()),
        Optional.empty());
  }
}
