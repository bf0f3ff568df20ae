package lodeswing.web.basin;

import java.util.OptionalInt;
import lodeswing.analysis.basin.MapLabel;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.outcome.OutcomeFinders;
import lodeswing.core.rig.Release;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.limits.Limits;
import org.springframework.stereotype.Component;

/** What the map of a layout's usual window says of one release, for answers that name its end. */
@Component
public final class UsualMap {

  private final OutcomeFinders finders;
  private final Limits limits;

  UsualMap(OutcomeFinders finders, Limits limits) {
    this.finders = finders;
    this.limits = limits;
  }

  /**
   * The end that the map's first tile names for a release, as {@code Ends} codes it.
   *
   * @param document the layout
   * @param landscape the same, made ready
   * @param release how the bob is let go, in SI; empty where the map does not show it
   */
  public OptionalInt end(LayoutDocument document, Landscape landscape, Release release) {
    BasinRequest usual = BasinRequest.usual(document);
    return new MapLabel(landscape, usual.window(), BasinAnswers.TILE_SIZE)
        .of(release, finders, limits.followedS());
  }
}
