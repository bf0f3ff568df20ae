package lodeswing.store;

import java.util.Map;
import lodeswing.job.Computation;
import org.jspecify.annotations.Nullable;
import org.slf4j.MDC;

/** Lets what a computing thread logs bear the trace of the request that asked for the work. */
final class CarriedContext {

  private CarriedContext() {}

  /** The same work under the log context of the thread that calls this. */
  static Computation.Work over(Computation.Work work) {
    Map<String, String> asked = MDC.getCopyOfContextMap();
    return progress -> {
      Map<String, String> before = MDC.getCopyOfContextMap();
      set(asked);
      try {
        return work.compute(progress);
      } finally {
        set(before);
      }
    };
  }

  private static void set(@Nullable Map<String, String> context) {
    if (context == null) {
      MDC.clear();
    } else {
      MDC.setContextMap(context);
    }
  }
}
