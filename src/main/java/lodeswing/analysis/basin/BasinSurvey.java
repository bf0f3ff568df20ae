package lodeswing.analysis.basin;

/**
 * What must be known of a window before maps of it are drawn.
 *
 * @param deepestZoom last zoom at which labels hold when the tolerance is tightened tenfold
 * @param halfTime median of the sealing times over the window: where shading is halfway
 * @param steadyShare share of the labels of a coarse grid that hold when the tolerance is tightened
 *     tenfold; the others are chance, since rounding alone decides them
 */
public record BasinSurvey(int deepestZoom, double halfTime, double steadyShare) {}
