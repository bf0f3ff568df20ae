package lodeswing.core.regression;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.analysis.MultivariateMatrixFunction;
import org.apache.commons.math3.analysis.MultivariateVectorFunction;
import org.apache.commons.math3.exception.ConvergenceException;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.exception.TooManyIterationsException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealVector;

/**
 * Fits a curve by the method of Levenberg and Marquardt.
 *
 * <p>Slopes are those of {@link Slopes}. Values beyond a bound are taken back to it. The best point
 * that was looked at is the answer, also where the iteration finds that it can do no better for
 * rounding.
 *
 * <p>Source: J. J. More, in Numerical Analysis, Lecture Notes in Mathematics 630 (1978) 105, as
 * Apache Commons Math carries it out.
 */
public final class NonlinearRegression {

  /**
   * Length of the first step at most, in the scaled length of the start. With Commons Math's 100
   * the first step of BoxBOD, a set of NIST's, leads from the start (1, 1) to where the curve does
   * not change any more; with 10, 1 and 0.1 all sets of {@code StatisticalReferenceDataTest} are
   * met.
   */
  private static final double FIRST_STEP = 10;

  private final double tolerance;
  private final int iterations;

  /**
   * A way to fit.
   *
   * @param tolerance relative change of the sum of squares, and of the parameters, at which it ends
   * @param iterations at most
   */
  public NonlinearRegression(double tolerance, int iterations) {
    this.tolerance = tolerance;
    this.iterations = iterations;
  }

  /**
   * Fits a curve.
   *
   * @param model the curve
   * @param parameters what may change, at least one
   * @param observed what the curve is to meet, more values than parameters
   */
  public Regression fit(CurveModel model, List<FreeParameter> parameters, double[] observed) {
    if (parameters.isEmpty() || observed.length <= parameters.size()) {
      throw new IllegalArgumentException(
          observed.length + " values cannot tell " + parameters.size() + " parameters");
    }
    Search search = new Search(model, parameters, observed);
    search.run();
    return search.result();
  }

  /** One fit under way. */
  private final class Search {

    private final CurveModel model;
    private final List<FreeParameter> parameters;
    private final double[] observed;
    private final Slopes slopes;
    private double[] best;
    private double least = Double.POSITIVE_INFINITY;
    private double[] lastPoint = {};
    private double[] lastValues = {};
    private boolean converged;

    Search(CurveModel model, List<FreeParameter> parameters, double[] observed) {
      this.model = model;
      this.parameters = parameters;
      this.observed = observed;
      this.slopes = new Slopes(model, parameters);
      this.best = parameters.stream().mapToDouble(FreeParameter::start).toArray();
    }

    void run() {
      MultivariateVectorFunction curve = this::values;
      MultivariateMatrixFunction rise = at -> slopes.at(at, values(at));
      var problem =
          new LeastSquaresBuilder()
              .start(best)
              .model(curve, rise)
              .parameterValidator(this::withinBounds)
              .target(observed)
              .lazyEvaluation(true)
              .maxEvaluations(10 * iterations)
              .maxIterations(iterations)
              .build();
      try {
        new LevenbergMarquardtOptimizer()
            .withInitialStepBoundFactor(FIRST_STEP)
            .withCostRelativeTolerance(tolerance)
            .withParameterRelativeTolerance(tolerance)
            .withOrthoTolerance(tolerance)
            .optimize(problem);
        converged = true;
      } catch (ConvergenceException e) {
        // Nothing better within the rounding.
        converged = true;
      } catch (TooManyEvaluationsException | TooManyIterationsException e) {
        converged = false;
      }
    }

    private RealVector withinBounds(RealVector point) {
      double[] inside = point.toArray();
      for (int k = 0; k < inside.length; k++) {
        double value = Double.isNaN(inside[k]) ? best[k] : inside[k];
        inside[k] = parameters.get(k).clamped(value);
      }
      return new ArrayRealVector(inside, false);
    }

    /** Values of the curve; asked again where they were asked last, they cost nothing. */
    private double[] values(double[] at) {
      if (Arrays.equals(at, lastPoint)) {
        return lastValues;
      }
      double[] values = model.values(at);
      lastPoint = at.clone();
      lastValues = values;
      double squares = squares(values);
      if (squares < least) {
        least = squares;
        best = at.clone();
      }
      return values;
    }

    private double squares(double[] values) {
      double sum = 0;
      for (int i = 0; i < values.length; i++) {
        double off = observed[i] - values[i];
        sum += off * off;
      }
      return sum;
    }

    Regression result() {
      double[] values = model.values(best);
      double[] residuals = new double[values.length];
      Arrays.setAll(residuals, i -> observed[i] - values[i]);
      return new Regression(parameters, best, residuals, slopes.at(best, values), converged);
    }
  }
}
