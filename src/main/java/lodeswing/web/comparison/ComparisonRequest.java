package lodeswing.web.comparison;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import lodeswing.analysis.comparison.ComparisonSpec;
import lodeswing.analysis.comparison.KnownRelease;
import lodeswing.core.chance.PartTolerances;
import lodeswing.core.rig.Release;
import lodeswing.job.ComputationKey;
import lodeswing.web.body.Body;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.layout.ToleranceFigures;
import lodeswing.web.posted.Posted;
import lodeswing.web.posted.PostedKind;
import lodeswing.web.recording.KeptRecording;
import lodeswing.web.recording.SentRecording;

/**
 * A comparison as it is asked for.
 *
 * @param layout the layout that foretells
 * @param canonical recording, frame and agreesWithin; the release with its accuracy and time where
 *     they are told
 * @param revision of the engine that answers
 */
record ComparisonRequest(LayoutDocument layout, Body canonical, int revision)
    implements Posted<ComparisonRequest> {

  static final PostedKind KIND =
      new PostedKind(
          "cmp",
          "comparison",
          "/v1/comparisons/",
          ComparisonShapes.STORED,
          "No comparison of this id is stored; post it again at /v1/comparisons.");

  /** Raised with every change of the form in which comparisons are stored. */
  private static final String FORM = "form=1";

  /** How exactly a hand places the bob if nobody says [mm; textbook, the model's unit]. */
  private static final double USUAL_ACCURACY = 1;

  private static final double USUAL_TEXTBOOK_ACCURACY = 0.001;

  /** From a body that {@link ComparisonShapes#REQUEST} has read, and its recording. */
  static ComparisonRequest of(LayoutDocument layout, Body sent, SentRecording recording) {
    return of(
        layout, sent.with("recording", recording.recording()).with("frame", recording.frame()));
  }

  /** From a body that {@link ComparisonShapes#STORED} has read. */
  static ComparisonRequest of(LayoutDocument layout, Body stored) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("recording", stored.object("recording"));
    members.put("frame", stored.object("frame"));
    stored
        .findObject("release")
        .ifPresent(
            release -> {
              members.put("release", release);
              members.put(
                  "placingAccuracy",
                  stored.findNumber("placingAccuracy").orElse(usualAccuracy(layout)));
              stored
                  .findNumber("releaseTimeS")
                  .ifPresent(time -> members.put("releaseTimeS", time));
            });
    members.put("agreesWithin", stored.number("agreesWithin"));
    return new ComparisonRequest(layout, Body.of(members), ComputationKey.ENGINE_REVISION);
  }

  private static double usualAccuracy(LayoutDocument layout) {
    return layout.model().equals("bench") ? USUAL_ACCURACY : USUAL_TEXTBOOK_ACCURACY;
  }

  @Override
  public PostedKind kind() {
    return KIND;
  }

  @Override
  public ComparisonRequest of(int other) {
    return new ComparisonRequest(layout, canonical, other);
  }

  /** Names what is found: labels do not change it, tolerances of the parts do. */
  ComputationKey key() {
    String tolerances = layout.canonical().findObject("tolerances").map(Body::toJson).orElse("-");
    String asked = ComputationKey.digest(canonical.toJson() + tolerances);
    return new ComputationKey(
        "cpd", KIND.word() + "|" + FORM + "|" + layout.physicsKey() + "|" + asked, revision);
  }

  boolean bench() {
    return layout.model().equals("bench");
  }

  /** Metres in the layout's unit of length. */
  double unit() {
    return 1 / layout.shownPerUnit();
  }

  /** The recording and its frame. */
  KeptRecording kept() {
    return KeptRecording.of(canonical, layout);
  }

  /** The release that is told. */
  Optional<Body> release() {
    return canonical.findObject("release");
  }

  /** Distance that always counts as agreement, in the layout's unit of length. */
  double agreesWithin() {
    return canonical.number("agreesWithin");
  }

  /** What the builder says of the parts. */
  Optional<PartTolerances> tolerances() {
    return layout
        .canonical()
        .findObject("tolerances")
        .map(ToleranceFigures::inSi)
        .filter(parts -> bench() && !parts.equals(PartTolerances.EXACT));
  }

  /** What the analysis is asked. */
  ComparisonSpec spec() {
    KeptRecording kept = kept();
    return new ComparisonSpec(
        kept.inSi(),
        kept.frameInSi(),
        kept.mirrored().equals("unknown"),
        release().map(this::known),
        agreesWithin() * unit(),
        tolerances());
  }

  private KnownRelease known(Body release) {
    return new KnownRelease(
        new Release(
            release.number("x") * unit(),
            release.number("y") * unit(),
            release.number("vx") * unit(),
            release.number("vy") * unit()),
        canonical.number("placingAccuracy") * unit(),
        canonical.findNumber("releaseTimeS"));
  }
}
