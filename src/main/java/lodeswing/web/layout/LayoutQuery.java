package lodeswing.web.layout;

import jakarta.servlet.http.HttpServletRequest;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.representation.Asking;
import lodeswing.web.representation.OpenQuery;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;

/**
 * The query of an address below a layout.
 *
 * @param parameters the resource's own
 * @param layout the layout with the figures that the query changes
 */
public record LayoutQuery(QueryParameters parameters, LayoutDocument layout) {

  /**
   * Reads both at once, so that every fault of both is told at once.
   *
   * @param layouts where the layout is
   * @param layoutId which one
   * @param known the parameters with a fixed name; all others are figures of the layout
   * @throws ProblemException {@code not-found}, or every fault of the query and of the changed
   *     layout
   */
  public static LayoutQuery read(
      HttpServletRequest request, LayoutStore layouts, String layoutId, Parameter<?>... known) {
    return read(Asking.of(request), layouts, layoutId, known);
  }

  /**
   * The same of what was asked for without HTTP.
   *
   * @throws ProblemException {@code not-found}, or every fault of the query and of the changed
   *     layout
   */
  public static LayoutQuery read(
      Asking request, LayoutStore layouts, String layoutId, Parameter<?>... known) {
    OpenQuery query = OpenQuery.read(request, known);
    LayoutDocument layout;
    try {
      layout = LayoutOverrides.apply(layouts.get(layoutId), query.others(), query.names());
    } catch (ProblemException e) {
      throw query.with(e);
    }
    return new LayoutQuery(query.closed(), layout);
  }
}
