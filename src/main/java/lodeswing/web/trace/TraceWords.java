package lodeswing.web.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import lodeswing.analysis.trace.TraceEvent;
import lodeswing.analysis.trace.TraceResult;
import lodeswing.core.motion.Limit;
import lodeswing.web.basin.EndNames;
import lodeswing.web.body.Numbers;
import lodeswing.web.landscape.LimitWords;
import lodeswing.web.restpoint.RestPointNames;

/** A trace in words. */
final class TraceWords {

  private final TraceRequest request;
  private final StoredPath stored;
  private final TraceResult path;
  private final RestPointNames names;
  private final EndNames ends;

  TraceWords(TraceRequest request, StoredPath stored) {
    this.request = request;
    this.stored = stored;
    this.path = stored.path();
    this.names = new RestPointNames(request.layout(), stored.places());
    this.ends = new EndNames(request.layout(), stored.places());
  }

  RestPointNames names() {
    return names;
  }

  EndNames ends() {
    return ends;
  }

  /** The outcome in one or a few words: the label, the place, or why there is none. */
  String outcome() {
    if (path.restPoint().isPresent()) {
      return names.name(path.restPoint().getAsInt());
    }
    Optional<TraceEvent> ending = path.ending();
    if (ending.isPresent()) {
      return text(ending.get().kind());
    }
    if (held().isPresent()) {
      return text(TraceEvent.Kind.STUCK);
    }
    return lossless() ? "never at rest" : "undecided";
  }

  /** What the map of the usual window shows here, where it is another end. */
  String mapOutcome() {
    OptionalInt other = stored.otherMapEnd();
    if (other.isPresent()) {
      return ends.name(other.getAsInt());
    }
    return stored.mapEnd().isPresent() ? "the same" : "not on the map";
  }

  private boolean lossless() {
    return request.layout().layout().lossless();
  }

  private Optional<TraceEvent> held() {
    return path.events().stream().filter(e -> e.kind() == TraceEvent.Kind.STUCK).findFirst();
  }

  /** What happened, in words. */
  static String text(TraceEvent.Kind kind) {
    return switch (kind) {
      case SEALED -> "sealed: no other rest point can be reached any more";
      case SETTLED -> "settled";
      case STUCK -> LimitWords.HELD;
      case TRUST_ENDS -> "from here on the computed path is not to be trusted";
      case FORETELLING_ENDS -> "from here on no hand can foretell the path";
      case SUSPENSION_SLACK -> LimitWords.of(Limit.Kind.SUSPENSION_SLACK);
      case MAGNET_CONTACT -> LimitWords.of(Limit.Kind.MAGNET_CONTACT);
      case PLATE_CONTACT -> LimitWords.of(Limit.Kind.PLATE_CONTACT);
      case ANGLE_LIMIT -> LimitWords.of(Limit.Kind.ANGLE_LIMIT);
    };
  }

  /** Names of the times that were not reached. */
  List<String> notReached() {
    List<String> names = new ArrayList<>();
    add(names, "sealedAtS", path.sealedAt());
    add(names, "settledAtS", path.settledAt());
    add(names, "trustedUntilS", path.trustedUntil());
    add(names, "foretoldUntilS", path.foretoldUntil());
    return names;
  }

  private static void add(List<String> names, String name, OptionalDouble time) {
    if (time.isEmpty()) {
      names.add(name);
    }
  }

  /** What to know, in sentences. */
  List<String> notes() {
    List<String> notes = new ArrayList<>();
    if (path.restPoint().isPresent()) {
      notes.add(names.sentence(path.restPoint().getAsInt()));
    }
    path.ending()
        .ifPresent(
            event ->
                notes.add(
                    "At "
                        + time(event.time())
                        + " "
                        + text(event.kind())
                        + "; the model holds no further, and neither does the path."));
    held().ifPresent(event -> notes.add(holding(event)));
    if (path.restPoint().isEmpty() && path.ending().isEmpty() && held().isEmpty()) {
      notes.add(
          lossless()
              ? "Nothing takes energy out of this swing: the bob never comes to rest."
              : "Up to "
                  + time(path.followedUntil())
                  + " it was not decided where the bob comes to rest.");
    }
    if (path.restPoint().isPresent() && !path.sure()) {
      notes.add(
          "The outcome is not sure: the same release computed ten times more exactly ends elsewhere"
              + " or undecided. Read it as one of the ends that this release can have.");
    }
    stored.otherMapEnd().ifPresent(end -> notes.add(onTheMap(end)));
    notes.add(trust());
    notes.add(foretelling());
    return notes;
  }

  private String holding(TraceEvent event) {
    String belonging =
        path.restPoint().isPresent()
            ? "inside its zone about the rest point"
            : "at a place that belongs to no one rest point";
    return "At "
        + time(event.time())
        + " the friction of the pivot holds the bob for good, "
        + belonging
        + ".";
  }

  private String onTheMap(int end) {
    return "The map of the usual window shows another end here: "
        + ends.name(end)
        + ". Maps are computed less exactly than a single path, and for this release that is enough"
        + " to change the end; "
        + (path.sure() ? "where the two differ, believe this answer." : "neither answer is sure.");
  }

  private String trust() {
    String distance = request.bench() ? "1 mm" : "a fiftieth of the magnets' spacing";
    return path.trustedUntil().isPresent()
        ? "The computed path is right to "
            + distance
            + " until "
            + time(path.trustedUntil().getAsDouble())
            + "; after that it shows one motion of the right kind, not the true one."
        : "The computed path is right to " + distance + " all the way.";
  }

  private String foretelling() {
    String hand =
        request.bench()
            ? "A hand that places the bob to within "
                + Numbers.shortest(request.placingAccuracy())
                + " mm"
            : "A release known to within " + Numbers.shortest(request.placingAccuracy());
    return path.foretoldUntil().isPresent()
        ? hand + " can foretell it until " + time(path.foretoldUntil().getAsDouble()) + "."
        : hand + " can foretell it all the way.";
  }

  String time(double seconds) {
    String figure = Numbers.shortest(Math.rint(seconds * 100) / 100);
    return request.bench() ? figure + " s" : "t = " + figure;
  }
}
