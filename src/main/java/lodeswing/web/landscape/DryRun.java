package lodeswing.web.landscape;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import lodeswing.job.Computation;
import lodeswing.web.body.Body;
import lodeswing.web.body.FlagShape;
import lodeswing.web.body.MapShape;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.ObjectShape;
import lodeswing.web.body.Shape;
import lodeswing.web.body.TextShape;
import lodeswing.web.layout.LayoutDocument;
import org.springframework.stereotype.Component;

/** What a dry run answers: the names of what would be computed, and what that would cost now. */
@Component
public final class DryRun {

  private static final Shape ID = new TextShape(60);
  private static final Shape COUNT = NumberShape.between(0, 1e18);
  private static final Shape WORK = NumberShape.between(0, 1e300);

  private static final ObjectShape COST =
      ObjectShape.named("PreparingCost", "What making a layout ready takes.")
          .open()
          .required("preparingWork", WORK, "Evaluations of a magnet's potential.")
          .required("preparingWorkLimit", WORK, "As many are allowed.")
          .build();

  /** The answer. */
  public static final ObjectShape DOCUMENT =
      ObjectShape.named("DryRun", "What would be computed and what it would cost, not begun.")
          .open()
          .required("dryRun", new FlagShape(), "true.")
          .required("layoutId", ID, "The layout.")
          .optional("traceId", ID, "The trace.")
          .optional("twinsId", ID, "The pair of twins.")
          .optional("basinId", ID, "The map.")
          .optional("oddsId", ID, "The odds.")
          .optional("sweepId", ID, "The sweep.")
          .optional("points", COUNT, "Points of the sweep.")
          .optional("pieces", COUNT, "Pieces of the sweep, each of which is kept by itself.")
          .optional("tuningId", ID, "The tuning.")
          .optional("candidates", COUNT, "Layouts that the tuning may try.")
          .optional("fitId", ID, "The fit.")
          .optional("comparisonId", ID, "The comparison.")
          .optional("places", COUNT, "Places of the recording.")
          .optional("window", new MapShape(WORK, 10, 20), "The map's window.")
          .optional("samples", COUNT, "Samples of the trace, or of each of the twins.")
          .optional("releases", COUNT, "Releases of the list, or of odds or a tuning at most.")
          .optional(
              "releasesPerTile", COUNT, "Releases of each tile, which is asked for by itself.")
          .required(
              "costReleases",
              COUNT,
              "What the work would cost now, about, in releases of a textbook map; less once the"
                  + " layout has been made ready. The limit waitingReleases counts in the same unit.")
          .required("cost", COST, "What making the layout ready takes.")
          .build();

  private final PreparingCost preparing;

  DryRun(PreparingCost preparing) {
    this.preparing = preparing;
  }

  /**
   * The answer for a piece of work.
   *
   * @param layout what it is about
   * @param work which is not begun
   * @param about what else it says, by name
   */
  public byte[] of(LayoutDocument layout, Computation work, Map<String, Object> about) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("dryRun", true);
    members.put("layoutId", layout.layoutId());
    members.putAll(about);
    members.put("costReleases", (double) work.releases());
    members.put("cost", preparing.described(layout));
    return Body.of(members).toJson().getBytes(StandardCharsets.UTF_8);
  }
}
