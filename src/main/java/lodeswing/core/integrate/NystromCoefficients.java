package lodeswing.core.integrate;

/**
 * Coefficients of the pair 8(6), as weighted sums over the stages' second derivatives g.
 *
 * <p>Dormand, El-Mikkawy and Prince, IMA J. Numer. Anal. 7 (1987) 423. Rows 3 to 8 give the places
 * of the stages, row 9 the place at the end and speedRow the speed; placeError and speedError are
 * the differences to the solution of order 6.
 */
public final class NystromCoefficients {

  /** Power of the step's size that its error is taken to grow with. */
  public static final int CONTROL_ORDER = 7;

  static final double A21 = 1.0 / 800.0;
  private static final double A31 = 1.0 / 600.0;
  private static final double A32 = 1.0 / 300.0;
  private static final double A41 = 9.0 / 200.0;
  private static final double A42 = -9.0 / 100.0;
  private static final double A43 = 9.0 / 100.0;
  private static final double A51 = -66701.0 / 197352.0;
  private static final double A52 = 28325.0 / 32892.0;
  private static final double A53 = -2665.0 / 5482.0;
  private static final double A54 = 2170.0 / 24669.0;
  private static final double A61 = 227015747.0 / 304251000.0;
  private static final double A62 = -54897451.0 / 30425100.0;
  private static final double A63 = 12942349.0 / 10141700.0;
  private static final double A64 = -9499.0 / 304251.0;
  private static final double A65 = 539.0 / 9250.0;
  private static final double A71 = -1131891597.0 / 901789000.0;
  private static final double A72 = 41964921.0 / 12882700.0;
  private static final double A73 = -6663147.0 / 3220675.0;
  private static final double A74 = 270954.0 / 644135.0;
  private static final double A75 = -108.0 / 5875.0;
  private static final double A76 = 114.0 / 1645.0;
  private static final double A81 = 13836959.0 / 3667458.0;
  private static final double A82 = -17731450.0 / 1833729.0;
  private static final double A83 = 1063919505.0 / 156478208.0;
  private static final double A84 = -33213845.0 / 39119552.0;
  private static final double A85 = 13335.0 / 28544.0;
  private static final double A86 = -705.0 / 14272.0;
  private static final double A87 = 1645.0 / 57088.0;
  private static final double B1 = 223.0 / 7938.0;
  private static final double B3 = 1175.0 / 8064.0;
  private static final double B4 = 925.0 / 6048.0;
  private static final double B5 = 41.0 / 448.0;
  private static final double B6 = 925.0 / 14112.0;
  private static final double B7 = 1175.0 / 72576.0;
  private static final double V1 = 223.0 / 7938.0;
  private static final double V3 = 5875.0 / 36288.0;
  private static final double V4 = 4625.0 / 21168.0;
  private static final double V5 = 41.0 / 224.0;
  private static final double V6 = 4625.0 / 21168.0;
  private static final double V7 = 5875.0 / 36288.0;
  private static final double V8 = 223.0 / 7938.0;
  private static final double E1 = -544307.0 / 12215700.0;
  private static final double E3 = 544307.0 / 4963840.0;
  private static final double E4 = -544307.0 / 3722880.0;
  private static final double E5 = 1632921.0 / 12409600.0;
  private static final double E6 = -544307.0 / 8686720.0;
  private static final double E7 = 544307.0 / 44674560.0;
  private static final double D1 = -544307.0 / 12215700.0;
  private static final double D3 = 544307.0 / 4467456.0;
  private static final double D4 = -544307.0 / 2606016.0;
  private static final double D5 = 1632921.0 / 6204800.0;
  private static final double D6 = -544307.0 / 2606016.0;
  private static final double D7 = 544307.0 / 4467456.0;
  private static final double D8 = 322012.0 / 3053925.0;
  private static final double D9 = -3.0 / 20.0;

  /** Stage times, the first stage being at 0. */
  private static final double[] TIMES = {0, 0.05, 0.1, 0.3, 0.5, 0.7, 0.9, 1};

  private static final double[][] PLACES = {
    {},
    {A21},
    {A31, A32},
    {A41, A42, A43},
    {A51, A52, A53, A54},
    {A61, A62, A63, A64, A65},
    {A71, A72, A73, A74, A75, A76},
    {A81, A82, A83, A84, A85, A86, A87}
  };

  private static final double[] END = {B1, 0, B3, B4, B5, B6, B7};
  private static final double[] SPEED = {V1, 0, V3, V4, V5, V6, V7, V8};
  private static final double[] PLACE_ERROR = {E1, 0, E3, E4, E5, E6, E7};
  private static final double[] SPEED_ERROR = {D1, 0, D3, D4, D5, D6, D7, D8, D9};

  private NystromCoefficients() {}

  /** Time of a stage, 0 to 7, as part of the step. */
  public static double time(int stage) {
    return TIMES[stage];
  }

  /** Weights of the stages before a stage, 1 to 7, in its place; a copy. */
  public static double[] places(int stage) {
    return PLACES[stage].clone();
  }

  /** Weights in the place at the end; a copy. */
  public static double[] end() {
    return END.clone();
  }

  /** Weights in the speed at the end; a copy. */
  public static double[] speed() {
    return SPEED.clone();
  }

  /** Weights in the error of the place; a copy. */
  public static double[] placeErrors() {
    return PLACE_ERROR.clone();
  }

  /** Weights in the error of the speed, the last being that of the end's force; a copy. */
  public static double[] speedErrors() {
    return SPEED_ERROR.clone();
  }

  static double row3(double[] g) {
    return Math.fma(A31, g[0], A32 * g[1]);
  }

  static double row4(double[] g) {
    return Math.fma(A41, g[0], Math.fma(A42, g[1], A43 * g[2]));
  }

  static double row5(double[] g) {
    return Math.fma(A51, g[0], Math.fma(A52, g[1], Math.fma(A53, g[2], A54 * g[3])));
  }

  static double row6(double[] g) {
    return Math.fma(
        A61, g[0], Math.fma(A62, g[1], Math.fma(A63, g[2], Math.fma(A64, g[3], A65 * g[4]))));
  }

  static double row7(double[] g) {
    return Math.fma(
        A71,
        g[0],
        Math.fma(
            A72, g[1], Math.fma(A73, g[2], Math.fma(A74, g[3], Math.fma(A75, g[4], A76 * g[5])))));
  }

  static double row8(double[] g) {
    return Math.fma(
        A81,
        g[0],
        Math.fma(
            A82,
            g[1],
            Math.fma(
                A83,
                g[2],
                Math.fma(A84, g[3], Math.fma(A85, g[4], Math.fma(A86, g[5], A87 * g[6]))))));
  }

  static double row9(double[] g) {
    return Math.fma(
        B1,
        g[0],
        Math.fma(B3, g[2], Math.fma(B4, g[3], Math.fma(B5, g[4], Math.fma(B6, g[5], B7 * g[6])))));
  }

  static double speedRow(double[] g) {
    return Math.fma(
        V1,
        g[0],
        Math.fma(
            V3,
            g[2],
            Math.fma(
                V4, g[3], Math.fma(V5, g[4], Math.fma(V6, g[5], Math.fma(V7, g[6], V8 * g[7]))))));
  }

  static double placeError(double[] g) {
    return Math.fma(
        E1,
        g[0],
        Math.fma(E3, g[2], Math.fma(E4, g[3], Math.fma(E5, g[4], Math.fma(E6, g[5], E7 * g[6])))));
  }

  static double speedError(double[] g) {
    return Math.fma(
        D1,
        g[0],
        Math.fma(
            D3,
            g[2],
            Math.fma(
                D4,
                g[3],
                Math.fma(
                    D5,
                    g[4],
                    Math.fma(D6, g[5], Math.fma(D7, g[6], Math.fma(D8, g[7], D9 * g[8])))))));
  }
}
