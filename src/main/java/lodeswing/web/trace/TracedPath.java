package lodeswing.web.trace;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import lodeswing.analysis.trace.TraceResult;
import lodeswing.figure.Trail;
import lodeswing.web.body.Body;

/** One path as a trace would tell of it, for resources that tell of several. */
public final class TracedPath {

  private final TraceRequest request;
  private final TraceAnswers answers;

  /**
   * A path.
   *
   * @param request the trace that it answers
   * @param stored the path itself
   */
  public TracedPath(TraceRequest request, StoredPath stored) {
    this.request = request;
    this.answers = new TraceAnswers(request, stored);
  }

  /** The path in SI. */
  public TraceResult path() {
    return answers.stored().path();
  }

  /** Where the bob comes to rest, what ends its motion, or that it is undecided. */
  public Body outcome() {
    return answers.outcome().orElseGet(() -> TraceAnswers.ended("undecided", outcomeWords()));
  }

  /** The same in a few words. */
  public String outcomeWords() {
    return answers.words().outcome();
  }

  /** The place where it rests, to follow the word "rest"; its end in a few words if it does not. */
  public String where() {
    return path().restPoint().isPresent()
        ? answers.words().names().where(path().restPoint().getAsInt())
        : outcomeWords();
  }

  /** Whether it is known how the path ends. */
  public boolean decided() {
    return answers.stored().decided();
  }

  /** Whether both have the same end, or are both undecided. */
  public boolean endsLike(TracedPath other) {
    return answers.stored().end() == other.answers.stored().end();
  }

  /** Release, samples, events, outcome and times, as in a trace. */
  public Body document() {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("release", request.canonical().object("release"));
    members.put("outcome", outcome());
    members.put("sure", path().sure());
    TraceAnswers.put(members, "sealedAtS", path().sealedAt());
    TraceAnswers.put(members, "settledAtS", path().settledAt());
    TraceAnswers.put(members, "trustedUntilS", path().trustedUntil());
    TraceAnswers.put(members, "foretoldUntilS", path().foretoldUntil());
    members.put("followedUntilS", TraceAnswers.time(path().followedUntil()));
    members.put("events", path().events().stream().map(answers::event).toList());
    members.put("samples", answers.samples());
    return Body.of(members);
  }

  /**
   * The path as pictures of several show it: without until when a hand can foretell it.
   *
   * @param name what to call it
   * @param happenings what else to mark on it
   */
  public Trail trail(String name, List<Trail.Happening> happenings) {
    return TracePicture.trail(request, answers, name, OptionalDouble.empty(), happenings);
  }
}
