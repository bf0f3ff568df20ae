package lodeswing.web.basin;

import lodeswing.analysis.basin.BasinMap;
import lodeswing.core.window.PixelGrid;
import lodeswing.render.png.BasinPainter;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import lodeswing.web.representation.TableDialect;
import org.springframework.stereotype.Component;

/** Computed maps in each of their forms. */
@Component
final class BasinReplies {

  private final BasinComputations computations;

  BasinReplies(BasinComputations computations) {
    this.computations = computations;
  }

  /** A tile as picture, file or table; {@code query} must know {@link BasinQuery#PATTERNS}. */
  Reply tile(
      Representation form,
      BasinRequest basin,
      TilePlace place,
      byte[] file,
      QueryParameters query) {
    if (form == Representation.BINARY) {
      return Reply.of(form, file);
    }
    BasinMap map = MapFile.read(file);
    PixelGrid grid =
        PixelGrid.tile(basin.window(), place.zoom(), place.x(), place.y(), map.width());
    if (form == Representation.CSV) {
      var answers = new BasinAnswers(basin, computations.surveyNow(basin));
      return Reply.of(form, answers.csv(map, grid, TableDialect.of(query)));
    }
    return Reply.of(form, painter(map, file, query).png(grid));
  }

  /** A picture of the whole window, with its text in it, or its file. */
  Reply preview(
      Representation form,
      BasinRequest basin,
      BasinQuery.Size size,
      byte[] file,
      QueryParameters query) {
    if (form == Representation.BINARY) {
      return Reply.of(form, file);
    }
    BasinMap map = MapFile.read(file);
    PixelGrid grid = PixelGrid.whole(basin.window(), size.width(), size.height());
    var words = new BasinWords(basin, computations.surveyNow(basin));
    return Reply.of(form, painter(map, file, query).png(grid, words.alternative(map)));
  }

  private static BasinPainter painter(BasinMap map, byte[] file, QueryParameters query) {
    return new BasinPainter(map, MapFile.halfTime(file), query.get(BasinQuery.PATTERNS));
  }
}
