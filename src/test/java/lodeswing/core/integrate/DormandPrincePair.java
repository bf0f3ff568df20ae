package lodeswing.core.integrate;

import lodeswing.core.motion.Motion;

/**
 * Dormand and Prince's pair of order 8 with error estimates of orders 5 and 3, which collocation is
 * measured against.
 *
 * <p>Twelve stages; places come from the stages' speeds. The error is h |e5|^2 / sqrt(|e5|^2 + 0.01
 * |e3|^2), of order h^8. The acceleration at the end is evaluated when the next step or the dense
 * output asks for it, so that a rejected step costs eleven evaluations and a last one twelve less.
 * Hairer, Norsett and Wanner, Solving Ordinary Differential Equations I (1993), section II.10;
 * Prince and Dormand, J. Comput. Appl. Math. 7 (1981) 67.
 */
final class DormandPrincePair extends Stepper {

  private static final int STAGES = 12;
  private static final double NODE = 0.815;

  private final double[] v0 = new double[STAGES];
  private final double[] v1 = new double[STAGES];
  private final double[] a0 = new double[STAGES];
  private final double[] a1 = new double[STAGES];
  private boolean endKnown;
  private double inner0;
  private double inner1;

  DormandPrincePair(Motion motion) {
    super(motion);
  }

  @Override
  StepControl control() {
    return StepControl.of(8);
  }

  @Override
  double order() {
    return 8;
  }

  @Override
  void beginStages() {
    endKnown = false;
  }

  @Override
  void completeEnd() {
    if (!endKnown) {
      accelerate(endState[0], endState[1], endState[2], endState[3]);
      endAcceleration[0] = out[0];
      endAcceleration[1] = out[1];
      endKnown = true;
    }
  }

  @Override
  double tryStages(double h) {
    v0[0] = startState[2];
    v1[0] = startState[3];
    a0[0] = startAcceleration[0];
    a1[0] = startAcceleration[1];
    for (int i = 1; i < STAGES; i++) {
      double[] row = A[i];
      v0[i] = Math.fma(h, sum(row, a0, i), startState[2]);
      v1[i] = Math.fma(h, sum(row, a1, i), startState[3]);
      double q0 = Math.fma(h, sum(row, v0, i), startState[0]);
      double q1 = Math.fma(h, sum(row, v1, i), startState[1]);
      accelerate(q0, q1, v0[i], v1[i]);
      a0[i] = out[0];
      a1[i] = out[1];
    }
    endState[0] = Math.fma(h, sum(B, v0, STAGES), startState[0]);
    endState[1] = Math.fma(h, sum(B, v1, STAGES), startState[1]);
    endState[2] = Math.fma(h, sum(B, a0, STAGES), startState[2]);
    endState[3] = Math.fma(h, sum(B, a1, STAGES), startState[3]);
    endKnown = false;
    double five = error(E5);
    double three = error(E3);
    double denominator = five + 0.01 * three;
    return denominator > 0 ? h * h * five * five / denominator : denominator;
  }

  private double error(double[] e) {
    return phaseSquared(
        sum(e, v0, STAGES), sum(e, v1, STAGES), sum(e, a0, STAGES), sum(e, a1, STAGES));
  }

  private static double sum(double[] row, double[] values, int count) {
    double sum = row[0] * values[0];
    for (int j = 1; j < count; j++) {
      sum = Math.fma(row[j], values[j], sum);
    }
    return sum;
  }

  @Override
  void bend(StepPolynomial first, StepPolynomial second) {
    inner(first, second, 0.5);
    first.bendMiddle(inner0);
    second.bendMiddle(inner1);
    inner(first, second, 0.5 - 0.5 * NODE);
    double low0 = inner0;
    double low1 = inner1;
    inner(first, second, 0.5 + 0.5 * NODE);
    first.bendPairAroundMiddle(NODE, low0, inner0);
    second.bendPairAroundMiddle(NODE, low1, inner1);
  }

  /** h^2 q'' at theta, from the polynomials as they are. */
  private void inner(StepPolynomial first, StepPolynomial second, double theta) {
    accelerate(
        first.place(theta),
        second.place(theta),
        first.speed(theta) / size,
        second.speed(theta) / size);
    inner0 = size * size * out[0];
    inner1 = size * size * out[1];
  }

  private static final double[][] A = {
    {},
    {0.05260015195876773},
    {0.0197250569845379, 0.0591751709536137},
    {0.02958758547680685, 0, 0.08876275643042054},
    {0.2413651341592667, 0, -0.8845494793282861, 0.924834003261792},
    {0.037037037037037035, 0, 0, 0.17082860872947386, 0.12546768756682242},
    {0.037109375, 0, 0, 0.17025221101954405, 0.06021653898045596, -0.017578125},
    {
      0.03709200011850479,
      0,
      0,
      0.17038392571223998,
      0.10726203044637328,
      -0.015319437748624402,
      0.008273789163814023
    },
    {
      0.6241109587160757,
      0,
      0,
      -3.3608926294469414,
      -0.868219346841726,
      27.59209969944671,
      20.154067550477894,
      -43.48988418106996
    },
    {
      0.47766253643826434,
      0,
      0,
      -2.4881146199716677,
      -0.590290826836843,
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
      1.0914373489967295,
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
      -2.0008720582248625,
      -17.9589318631188,
      27.94888452941996,
      -2.8589982771350235,
      -8.87285693353063,
      12.360567175794303,
      0.6433927460157636
    },
  };

  private static final double[] B = {
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
  };

  private static final double[] E3 = {
    -0.18980075407240762,
    0,
    0,
    0,
    0,
    4.450312892752409,
    1.8915178993145003,
    -5.801203960010585,
    -0.4226823213237919,
    -0.1521609496625161,
    0.20136540080403034,
    0.02265179219836082
  };

  private static final double[] E5 = {
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
  };
}
