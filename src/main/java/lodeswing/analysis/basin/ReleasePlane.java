package lodeswing.analysis.basin;

import lodeswing.core.outcome.Ends;
import lodeswing.core.outcome.OutcomeFinder;
import lodeswing.core.statistics.LabelGrid;
import lodeswing.core.statistics.PlaneLabelling;

/**
 * The plan as a labelled plane: a place bears the end of the release at rest from there.
 *
 * <p>With {@link lodeswing.core.statistics.UncertaintySampling} it finds the uncertainty exponent
 * at distances below a map's pixels. Releases that cannot begin, or do not settle, have no label.
 *
 * @param finder finds the ends, on the calling thread
 */
public record ReleasePlane(OutcomeFinder finder) implements PlaneLabelling {

  @Override
  public void label(double[] x, double[] y, int[] label) {
    double[] releases = new double[4 * label.length];
    for (int n = 0; n < label.length; n++) {
      releases[4 * n] = x[n];
      releases[4 * n + 1] = y[n];
    }
    Ends ends = new Ends(label.length);
    finder.find(releases, 0, label.length, ends);
    for (int n = 0; n < label.length; n++) {
      int end = ends.end(n);
      boolean known = end != Ends.CANNOT_START && end != Ends.UNSETTLED;
      label[n] = known ? end : LabelGrid.NO_LABEL;
    }
  }
}
