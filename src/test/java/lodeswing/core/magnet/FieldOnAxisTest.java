package lodeswing.core.magnet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The closed forms on the axis that handbooks print, against the fields for any point. */
class FieldOnAxisTest {

  private static final double BR = 1.195;
  private final double[] b = new double[3];

  /** J. M. D. Coey, Magnetism and Magnetic Materials (2010), section 2.2, as a solenoid's axis. */
  private static double discOnAxis(double radius, double height, double z) {
    double far = z + height / 2;
    double near = z - height / 2;
    return BR / 2 * (far / Math.hypot(radius, far) - near / Math.hypot(radius, near));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.001, 0.0025, 0.004, 0.01, 0.03, 0.0326, 0.2, 3})
  void discFollowsTheSolenoidsAxis(double z) {
    new Disc(0.0125, 0.005, BR).field(0, 0, z, b);
    double expected = discOnAxis(0.0125, 0.005, z);
    assertEquals(expected, b[2], 1e-12 * expected + 2e-16);
    assertEquals(0, b[0]);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.002, 0.004, 0.01, 0.03, 0.2})
  void ringIsADiscLessADisc(double z) {
    new Ring(0.006, 0.0125, 0.005, BR).field(0, 0, z, b);
    double expected = discOnAxis(0.0125, 0.005, z) - discOnAxis(0.006, 0.005, z);
    assertEquals(expected, b[2], 1e-11 * Math.abs(expected) + 4e-16);
  }

  /**
   * J. M. Camacho and V. Sosa, Alternative method to calculate the magnetic field of permanent
   * magnets with azimuthal symmetry, Rev. Mex. Fis. E 59 (2013) 8, and the rectangle's form printed
   * in makers' handbooks: atan of the face's solid angle.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.0001, 0.003, 0.01, 0.05, 0.16, 0.3})
  void blockFollowsItsFacesSolidAngles(double above) {
    double l = 0.02;
    double w = 0.01;
    double h = 0.005;
    new Block(l, w, h, BR).field(0, 0, h / 2 + above, b);
    double far = above + h;
    double near = Math.atan(l * w / (2 * above * Math.sqrt(4 * above * above + l * l + w * w)));
    double back = Math.atan(l * w / (2 * far * Math.sqrt(4 * far * far + l * l + w * w)));
    double expected = BR / Math.PI * (near - back);
    assertEquals(expected, b[2], 1e-11 * expected + 4e-16);
  }

  /** Jackson (1999), eq. 5.105: 2/3 of the remanence inside. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 0.003, 0.0049})
  void sphereIsUniformInside(double z) {
    new Sphere(0.005, BR).field(0.0005, 0, z, b);
    assertEquals(2 * BR / 3, b[2], 1e-15);
  }
}
