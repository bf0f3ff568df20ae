package lodeswing.core.integrate.lane;

/**
 * Embedded Runge-Kutta pairs for lanes.
 *
 * <p>Coefficients are numbers published with the methods; a test measures the orders.
 */
@SuppressWarnings("ImmutableEnumChecker") // its arrays are never handed out
public enum RungeKuttaPair {
  /**
   * Order 8 with estimates of orders 5 and 3, twelve stages: Hairer, Norsett and Wanner, Solving
   * Ordinary Differential Equations I (1993), section II.5, "Dormand and Prince of order 8(5,3)".
   */
  ORDER_8(
      new double[][] {
        {0.05260015195876774},
        {0.0197250569845379, 0.0591751709536137},
        {0.02958758547680685, 0, 0.08876275643042056},
        {0.24136513415926666, 0, -0.884549479328286, 0.9248340032617919},
        {0.037037037037037035, 0, 0, 0.1708286087294739, 0.12546768756682242},
        {0.037109375, 0, 0, 0.17025221101954402, 0.060216538980455966, -0.017578125},
        {
          0.03709200011850479,
          0,
          0,
          0.17038392571223998,
          0.1072620304463733,
          -0.015319437748624402,
          0.008273789163814023
        },
        {
          0.6241109587160757,
          0,
          0,
          -3.360892629446941,
          -0.8682193468417261,
          27.59209969944671,
          20.154067550477894,
          -43.48988418106996
        },
        {
          0.47766253643826434,
          0,
          0,
          -2.4881146199716677,
          -0.5902908268368431,
          21.230051448181193,
          15.279233632882423,
          -33.28821096898486,
          -0.020331201708508627
        },
        {
          -0.9371424300859873,
          0,
          0,
          5.186372428844064,
          1.09143734899673,
          -8.149787010746927,
          -18.52006565999696,
          22.739487099350505,
          2.4936055526796523,
          -3.0467644718982196
        },
        {
          2.273310147516538,
          0,
          0,
          -10.53449546673725,
          -2.000872058224863,
          -17.9589318631188,
          27.94888452941996,
          -2.8589982771350235,
          -8.87285693353063,
          12.360567175794303,
          0.6433927460157636
        },
      },
      new double[] {
        0.054293734116568765,
        0,
        0,
        0,
        0,
        4.450312892752409,
        1.8915178993145003,
        -5.801203960010585,
        0.3111643669578199,
        -0.1521609496625161,
        0.20136540080403034,
        0.04471061572777259
      },
      new double[] {
        0.01312004499419488,
        0,
        0,
        0,
        0,
        -1.2251564463762044,
        -0.4957589496572502,
        1.6643771824549864,
        -0.35032884874997366,
        0.3341791187130175,
        0.08192320648511571,
        -0.022355307863886294
      },
      new double[] {
        -0.18980075407240762,
        0,
        0,
        0,
        0,
        4.450312892752409,
        1.8915178993145003,
        -5.801203960010585,
        -0.42268232132379197,
        -0.1521609496625161,
        0.20136540080403034,
        0.022651792198360825
      },
      8),

  /**
   * Order 5 with an estimate of order 4, seven stages, the last shared with the next step: Dormand
   * and Prince, J. Comput. Appl. Math. 6 (1980) 19.
   */
  ORDER_5(
      new double[][] {
        {1.0 / 5},
        {3.0 / 40, 9.0 / 40},
        {44.0 / 45, -56.0 / 15, 32.0 / 9},
        {19372.0 / 6561, -25360.0 / 2187, 64448.0 / 6561, -212.0 / 729},
        {9017.0 / 3168, -355.0 / 33, 46732.0 / 5247, 49.0 / 176, -5103.0 / 18656}
      },
      new double[] {35.0 / 384, 0, 500.0 / 1113, 125.0 / 192, -2187.0 / 6784, 11.0 / 84},
      new double[] {
        71.0 / 57600, 0, -71.0 / 16695, 71.0 / 1920, -17253.0 / 339200, 22.0 / 525, -1.0 / 40
      },
      new double[0],
      5);

  private final double[][] stages;
  private final double[] end;
  private final double[] errors;
  private final double[] second;
  private final int order;

  RungeKuttaPair(double[][] stages, double[] end, double[] errors, double[] second, int order) {
    this.stages = stages;
    this.end = end;
    this.errors = errors;
    this.second = second;
    this.order = order;
  }

  /** Stages of a step, the shared last one not counted. */
  public int stages() {
    return end.length;
  }

  /** Weights of the stages before a stage, from 1 on; a copy. */
  double[] places(int stage) {
    return stages[stage - 1].clone();
  }

  /** Weights of the end; a copy. */
  double[] end() {
    return end.clone();
  }

  /** Weights of the error, one more than there are stages where it needs the end's derivatives. */
  double[] errors() {
    return errors.clone();
  }

  /** Weights of the second error, none where there is no such estimate; a copy. */
  double[] second() {
    return second.clone();
  }

  /** Order of the solution. */
  int order() {
    return order;
  }
}
