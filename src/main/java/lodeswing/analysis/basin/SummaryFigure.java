package lodeswing.analysis.basin;

/**
 * A figure of a summary.
 *
 * @param value the figure
 * @param low lower end of its 95 % interval
 * @param high upper end of its 95 % interval
 * @param source the publication that defines it
 * @param sentence what it says, for a pupil, in plain English
 */
public record SummaryFigure(
    double value, double low, double high, String source, String sentence) {}
