package lodeswing.web.layout;

import java.nio.charset.StandardCharsets;
import java.util.List;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemException;

/** Whole bodies for tests, each one change away from a plain bench. */
final class LayoutBodies {
  static final String CORD = "{\"kind\":\"cord\",\"lengthMm\":420,\"bobMassG\":45}";
  static final String BOB =
      "{\"shape\":\"disc\",\"diameterMm\":15,\"heightMm\":5,\"grade\":\"N35\","
          + "\"poleDown\":\"north\"}";
  static final String SWINGS = "{\"swingsToHalf\":25}";

  private LayoutBodies() {}

  /** A bench with a cord, a disc bob and the given magnets, and what else is given. */
  static String bench(String gap, String magnets, String... more) {
    return with(CORD, BOB, gap, magnets, SWINGS, more);
  }

  static String with(
      String pendulum, String bob, String gap, String magnets, String damping, String... more) {
    return "{\"model\":\"bench\",\"pendulum\":"
        + pendulum
        + (bob.isEmpty() ? "" : ",\"bobMagnet\":" + bob)
        + ",\"gapMm\":"
        + gap
        + ",\"magnets\":["
        + magnets
        + "],\"damping\":"
        + damping
        + String.join("", more)
        + "}";
  }

  /** A ferrite disc of 25 mm by 5 mm at a place. */
  static String disc(String x, String y, String... more) {
    return "{\"x\":"
        + x
        + ",\"y\":"
        + y
        + ",\"shape\":\"disc\",\"diameterMm\":25,\"heightMm\":5,\"grade\":\"Y30\","
        + "\"poleUp\":\"south\""
        + String.join("", more)
        + "}";
  }

  static LayoutDocument read(String json) {
    return LayoutDocument.read(json.getBytes(StandardCharsets.UTF_8));
  }

  static List<Fault> faults(String json) {
    try {
      read(json);
    } catch (ProblemException e) {
      return e.faults();
    }
    throw new AssertionError("was not refused");
  }
}
