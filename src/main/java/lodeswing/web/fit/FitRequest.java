package lodeswing.web.fit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.core.recording.Recording;
import lodeswing.job.ComputationKey;
import lodeswing.web.body.Body;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.posted.Posted;
import lodeswing.web.posted.PostedKind;
import lodeswing.web.recording.KeptRecording;
import lodeswing.web.recording.SentRecording;

/**
 * A fit as it is asked for.
 *
 * @param layout the layout to begin with
 * @param canonical recording, frame and unknown; start and release where they are given
 * @param revision of the engine that answers
 */
record FitRequest(LayoutDocument layout, Body canonical, int revision)
    implements Posted<FitRequest> {

  static final PostedKind KIND =
      new PostedKind(
          "fit",
          "fit",
          "/v1/fits/",
          FitShapes.STORED,
          "No fit of this id is stored; post it again at /v1/fits.");

  /** Raised with every change of the form in which fits are stored. */
  private static final String FORM = "form=1";

  /** From a body that {@link FitShapes#REQUEST} has read, and its recording. */
  static FitRequest of(LayoutDocument layout, Body sent, SentRecording recording) {
    return of(
        layout, sent.with("recording", recording.recording()).with("frame", recording.frame()));
  }

  /** From a body that {@link FitShapes#STORED} has read. */
  static FitRequest of(LayoutDocument layout, Body stored) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("recording", stored.object("recording"));
    members.put("frame", stored.object("frame"));
    members.put("unknown", stored.texts("unknown"));
    stored.findObject("start").ifPresent(start -> members.put("start", start));
    stored.findObject("release").ifPresent(release -> members.put("release", release));
    return new FitRequest(layout, Body.of(members), ComputationKey.ENGINE_REVISION);
  }

  @Override
  public PostedKind kind() {
    return KIND;
  }

  @Override
  public FitRequest of(int other) {
    return new FitRequest(layout, canonical, other);
  }

  /** Names what is found: labels do not change it. */
  ComputationKey key(int mostPaths) {
    String asked = ComputationKey.digest(canonical.toJson());
    return new ComputationKey(
        "ffd",
        KIND.word() + "|" + FORM + "|" + mostPaths + "|" + layout.physicsKey() + "|" + asked,
        revision);
  }

  List<String> unknown() {
    return canonical.texts("unknown");
  }

  /** Where a quantity is asked to begin. */
  OptionalDouble start(String name) {
    return canonical
        .findObject("start")
        .map(start -> start.findNumber(name))
        .orElse(OptionalDouble.empty());
  }

  Optional<Body> release() {
    return canonical.findObject("release");
  }

  Body frame() {
    return canonical.object("frame");
  }

  /** The recording and its frame. */
  KeptRecording kept() {
    return KeptRecording.of(canonical, layout);
  }

  /** The recording in SI; in a textbook layout in the model's own units. */
  Recording recording() {
    return kept().inSi();
  }

  /** Metres in the layout's unit of length. */
  double unit() {
    return 1 / layout.shownPerUnit();
  }
}
