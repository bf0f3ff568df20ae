package lodeswing.web.jobs;

import jakarta.servlet.http.HttpServletRequest;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lodeswing.web.limits.Limits;
import lodeswing.web.representation.GeneralParameters;
import lodeswing.web.representation.QueryParameters;

/**
 * How long a client wants to wait for a result: the parameter {@code wait}, else Prefer (RFC 7240,
 * sections 4.1 and 4.3), else the service's default.
 *
 * @param patience bounded by the longest wait
 * @param respondAsync whether the client would rather not wait at all
 * @param waitGiven the seconds that Prefer named
 */
record WaitPreference(Duration patience, boolean respondAsync, Optional<Long> waitGiven) {

  private static final Pattern WAIT = Pattern.compile("wait\\s*=\\s*\"?(\\d{1,9})\"?");

  static WaitPreference of(HttpServletRequest request, QueryParameters query, Limits limits) {
    boolean respondAsync = false;
    Optional<Long> given = Optional.empty();
    for (String field : Collections.list(request.getHeaders("Prefer"))) {
      for (String preference : field.toLowerCase(Locale.ROOT).split(",")) {
        String bare = preference.split(";", 2)[0].strip();
        Matcher wait = WAIT.matcher(bare);
        respondAsync |= bare.equals("respond-async");
        if (given.isEmpty() && wait.matches()) {
          given = Optional.of(Long.valueOf(wait.group(1)));
        }
      }
    }
    long seconds =
        query
            .find(GeneralParameters.WAIT)
            .map(Integer::longValue)
            .or(fromPrefer(given, respondAsync))
            .orElse((long) limits.waitDefaultS());
    Duration patience = Duration.ofSeconds(Math.min(seconds, limits.waitLongestS()));
    return new WaitPreference(patience, respondAsync, given);
  }

  private static Supplier<Optional<Long>> fromPrefer(Optional<Long> given, boolean respondAsync) {
    return () -> given.isEmpty() && respondAsync ? Optional.of(0L) : given;
  }

  /** What Preference-Applied confirms; nothing where Prefer did not ask for any of it. */
  Optional<String> applied(boolean pending) {
    var confirmed = new ArrayList<String>(2);
    if (respondAsync && pending) {
      confirmed.add("respond-async");
    }
    waitGiven
        .filter(seconds -> seconds == patience.toSeconds())
        .ifPresent(seconds -> confirmed.add("wait=" + seconds));
    return confirmed.isEmpty() ? Optional.empty() : Optional.of(String.join(", ", confirmed));
  }
}
