package lodeswing.web.recording;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lodeswing.web.body.Body;

/** The recording in examples: a free swing of a cord that is thought to be 10 mm too long. */
public final class ExampleRecording {

  private static final double LENGTH = 0.42;
  private static final double GRAVITY = 9.80665;
  private static final double DECAY = 0.02;
  private static final double RATE = 30;

  private ExampleRecording() {}

  /**
   * Members of a request, layout and recording, without noise.
   *
   * @param places how many places follow the first one
   * @param loss that the layout states [N s/m]
   */
  public static Map<String, Object> request(int places, double loss) {
    List<Double> t = new ArrayList<>();
    List<Double> x = new ArrayList<>();
    List<Double> y = new ArrayList<>();
    double rate = Math.sqrt(GRAVITY / LENGTH);
    for (int i = 0; i <= places; i++) {
      double time = i / RATE;
      double left = Math.exp(-DECAY * time);
      t.add(Math.rint(time * 1e4) / 1e4);
      x.add(Math.rint(20e3 * left * Math.cos(rate * time)) / 1e3);
      y.add(Math.rint(10e3 * left * Math.sin(rate * time)) / 1e3);
    }
    Map<String, Object> recording = new LinkedHashMap<>();
    recording.put("t", t);
    recording.put("x", x);
    recording.put("y", y);
    Map<String, Object> pendulum = new LinkedHashMap<>();
    pendulum.put("kind", "cord");
    pendulum.put("lengthMm", 430.0);
    pendulum.put("bobMassG", 45.0);
    Map<String, Object> layout = new LinkedHashMap<>();
    layout.put("model", "bench");
    layout.put("pendulum", Body.of(pendulum));
    layout.put("gapMm", 25.0);
    layout.put("magnets", List.of());
    layout.put("damping", Body.of(Map.of("linearNsPerM", loss)));
    Map<String, Object> request = new LinkedHashMap<>();
    request.put("layout", Body.of(layout));
    request.put("recording", Body.of(recording));
    return request;
  }
}
