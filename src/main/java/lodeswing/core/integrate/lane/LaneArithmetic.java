package lodeswing.core.integrate.lane;

import lodeswing.core.motion.Motion;
import lodeswing.core.motion.TextbookMotion;

/**
 * What kernels are made of: operations that do the same for every lane of a block, each added to a
 * plan as passes.
 *
 * <p>Every implementation does the same + - * / sqrt and fma on a lane in the same order, none of
 * them across lanes, so that all give the same bits. An instance belongs to one block and one
 * thread.
 */
public interface LaneArithmetic {

  /** The block's slots. */
  double[] slots();

  /** A weighted sum of slots. */
  void sum(Plan plan, Row row);

  /**
   * Begins a Nystrom step: takes {@link LaneBlock#SIZE} as {@link LaneBlock#TRIED}, at most the
   * greatest, and writes its square, step times speed and the first stage.
   *
   * @param plan receives the passes
   * @param halfDrag rate k of the frame
   * @param spring omega0^2, which the force at the start leaves out
   * @param greatest size of a step at most
   */
  void beginNystrom(Plan plan, double halfDrag, double spring, double greatest);

  /**
   * Writes the powers e^(+-k c h) at the times of a Nystrom step's stages.
   *
   * @param plan receives the passes
   * @param halfDrag rate k of the frame
   */
  void exponentials(Plan plan, double halfDrag);

  /**
   * One stage of a Nystrom step: at x = e^(-k c h) y, with F the attractors' force, h^2 (e^(k c h)
   * F + rest y).
   *
   * @param plan receives the passes
   * @param motion the attractors
   * @param time index of the stage's time, 0 to 6
   * @param rest factor of the place itself, k^2 - omega0^2
   * @param to first of the stage's two slots
   */
  void attract(Plan plan, TextbookMotion motion, int time, double rest, int to);

  /**
   * Turns the sums of a Nystrom step into the state at {@link LaneBlock#NEW}.
   *
   * @param plan receives the passes
   * @param halfDrag rate k of the frame
   */
  void arrive(Plan plan, double halfDrag);

  /**
   * Attractors' force at {@link LaneBlock#NEW}, without the spring, to {@link LaneBlock#NEW_F}, the
   * mechanical energy to {@link LaneBlock#NEW_ENERGY}.
   */
  void attractAtEnd(Plan plan, TextbookMotion motion);

  /**
   * Last stage of a Nystrom step, from the force at its end.
   *
   * @param plan receives the passes
   * @param rest factor of the place itself, k^2 - omega0^2
   */
  void lastStage(Plan plan, double rest);

  /**
   * Turns the sums in {@link LaneBlock#ERRORS} from the moving frame into errors of the state.
   *
   * @param plan receives the passes
   * @param halfDrag rate k of the frame
   */
  void errors(Plan plan, double halfDrag);

  /**
   * Begins a Runge-Kutta step: takes {@link LaneBlock#SIZE} as {@link LaneBlock#TRIED} and writes
   * the first stage.
   */
  void beginRungeKutta(Plan plan);

  /**
   * One stage of a Runge-Kutta step: step times the derivatives at {@link RungeKuttaSlots#PLACE}.
   *
   * @param plan receives the passes
   * @param motion what moves
   * @param to first of the stage's four slots
   */
  void swing(Plan plan, Motion motion, int to);

  /**
   * Accelerations at {@link LaneBlock#NEW} to {@link LaneBlock#NEW_F}, the mechanical energy to
   * {@link LaneBlock#NEW_ENERGY}.
   */
  void swingAtEnd(Plan plan, Motion motion);

  /**
   * Last stage of a Runge-Kutta step, from the accelerations at its end.
   *
   * @param plan receives the passes
   * @param to first of the stage's four slots
   */
  void lastStageOfFour(Plan plan, int to);

  /**
   * Measures the errors of a pair with two estimates, in {@link LaneBlock#ERRORS} and {@link
   * RungeKuttaSlots#SECOND}: e^2 / (e^2 + 0.01 e2^2)^(1/2) (Hairer, Norsett and Wanner, Solving
   * Ordinary Differential Equations I, 1993, section II.10).
   */
  void measureTwo(Plan plan, StepRule rule);

  /** Measures {@link LaneBlock#ERRORS} and writes {@link LaneBlock#ERROR}. */
  void measure(Plan plan, StepRule rule);

  /** Sets the size of the next step and lets time move on where the step is accepted. */
  void control(Plan plan, StepRule rule);

  /** Marks lanes to look at, by the step just tried. */
  void attend(Plan plan, Watch watch);

  /** Moves state, force and energy on where the last step was accepted. */
  void advance(Plan plan);
}
