package lodeswing.analysis.comparison;

import java.util.Optional;
import lodeswing.core.chance.PartTolerances;
import lodeswing.core.recording.Recording;
import lodeswing.core.recording.RecordingFrame;

/**
 * What is compared.
 *
 * @param recording what was recorded
 * @param frame how it lies on the plate
 * @param eitherMirror whether its y axis may be reversed or not
 * @param release the release, where it is told
 * @param agreesWithin distance that always counts as agreement [m], 0 or above
 * @param tolerances how far the rig's parts may be off, where that is stated
 */
public record ComparisonSpec(
    Recording recording,
    RecordingFrame frame,
    boolean eitherMirror,
    Optional<KnownRelease> release,
    double agreesWithin,
    Optional<PartTolerances> tolerances) {}
