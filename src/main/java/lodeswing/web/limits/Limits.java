package lodeswing.web.limits;

import java.util.Arrays;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * Every limit that an operator may set, under {@code lodeswing.limits}; what a body may hold is
 * fixed by its shapes.
 *
 * <p>More components than usual: one for each limit, so that there is one place for all of them.
 */
@ConfigurationProperties("lodeswing.limits")
public record Limits(
    @Stated(unit = "byte", meaning = "longest body of a request") @DefaultValue("1048576")
        int bodyBytes,
    @Stated(unit = "character", meaning = "longest address with its query") @DefaultValue("8192")
        int urlCharacters,
    @Stated(
            unit = "s",
            meaning = "longest trace; model time units where the layout is a textbook one")
        @DefaultValue("3600")
        double durationS,
    @Stated(unit = "sample", meaning = "most samples of one trace") @DefaultValue("100000")
        int samplesPerTrace,
    @Stated(
            unit = "s",
            meaning =
                "how long each release of a map or a list is followed; model time units where the"
                    + " layout is a textbook one")
        @DefaultValue("600")
        double followedS,
    @Stated(unit = "pixel", meaning = "most pixels of a preview of a map") @DefaultValue("1048576")
        int previewPixels,
    @Stated(unit = "pixel", meaning = "most pixels of a glow picture") @DefaultValue("2000000")
        int glowPixels,
    @Stated(unit = "page", meaning = "most pages that a plate in true scale may take")
        @DefaultValue("64")
        int sheetPages,
    @Stated(unit = "byte", meaning = "most bytes of one bundle") @DefaultValue("33554432")
        int bundleBytes,
    @Stated(unit = "s", meaning = "longest play of an animation") @DefaultValue("60")
        int animationS,
    @Stated(unit = "frame", meaning = "most frames of an animation as GIF") @DefaultValue("600")
        int gifFrames,
    @Stated(unit = "release", meaning = "most releases of one list") @DefaultValue("100000")
        int releases,
    @Stated(unit = "release", meaning = "most releases of one list with settling times")
        @DefaultValue("5000")
        int settledReleases,
    @Stated(
            unit = "release",
            meaning =
                "most releases that one answer about odds may take, those on varied rigs apart")
        @DefaultValue("200000")
        int oddsReleases,
    @Stated(unit = "rig", meaning = "most varied rigs that one answer about odds may build")
        @DefaultValue("64")
        int oddsRigs,
    @Stated(unit = "point", meaning = "most points of one sweep, of its quantities together")
        @DefaultValue("900")
        int sweepPoints,
    @Stated(
            unit = "release",
            meaning = "most work of one sweep, as it is estimated before it begins")
        @DefaultValue("100000000")
        long sweepReleases,
    @Stated(
            unit = "swing",
            meaning = "most swings of all releases together that one occupancy may follow")
        @DefaultValue("1000000")
        int occupancySwings,
    @Stated(unit = "point", meaning = "most points of one map of the field")
        @DefaultValue("1048576")
        int fieldPoints,
    @Stated(unit = "filing", meaning = "most filings that one picture may strew")
        @DefaultValue("40000")
        int filings,
    @Stated(
            unit = "evaluation",
            meaning =
                "most evaluations of one magnet's field at one point, some ten nanoseconds each on"
                    + " one core, that one picture of the field may take, as they are estimated"
                    + " before it begins")
        @DefaultValue("5e9")
        double fieldEvaluations,
    @Stated(unit = "figure", meaning = "most figures that one tuning may move, two a place")
        @DefaultValue("60")
        int tuningFigures,
    @Stated(
            unit = "release",
            meaning = "most work that one tuning may cost, as it is estimated before it begins")
        @DefaultValue("60000000")
        long tuningReleases,
    @Stated(unit = "place", meaning = "most places of one recording") @DefaultValue("20000")
        int recordingPlaces,
    @Stated(
            unit = "path",
            meaning = "most paths that one fit may compute before it ends where it is")
        @DefaultValue("200000")
        int fitPaths,
    @Stated(unit = "byte", meaning = "longest body that lists releases or holds a recording")
        @DefaultValue("8388608")
        int listBytes,
    @Stated(unit = "s", meaning = "how long a request waits for its result if it does not say")
        @DefaultValue("20")
        int waitDefaultS,
    @Stated(unit = "s", meaning = "longest wait that Prefer or the parameter wait can ask for")
        @DefaultValue("60")
        int waitLongestS,
    @Stated(unit = "computation", meaning = "most computations that may wait for a free core")
        @DefaultValue("200")
        int waitingComputations,
    @Stated(
            unit = "release",
            meaning =
                "most work that may wait for a free core, as it is estimated before it begins")
        @DefaultValue("20000000")
        long waitingReleases,
    @Stated(unit = "stream", meaning = "most streams of events open at once") @DefaultValue("1000")
        int eventStreams,
    @Stated(unit = "byte", meaning = "weight of the results that are held in memory")
        @DefaultValue("134217728")
        long memoryBytes,
    @Stated(unit = "byte", meaning = "weight of the written answers that are held in memory")
        @DefaultValue("67108864")
        long replyBytes,
    @Stated(
            unit = "byte",
            meaning =
                "weight of the results that are kept in the database; beyond it those go that are"
                    + " cheap to compute again by their weight and long unused; layouts and"
                    + " requests stay and are not counted")
        @DefaultValue("2000000000")
        long storedBytes,
    @Stated(
            unit = "evaluation",
            meaning =
                "most evaluations of a magnet's potential, each 17 to 78 nanoseconds on one core,"
                    + " that making one layout ready may take")
        @DefaultValue("3e9")
        double preparingWork,
    @Stated(unit = "byte", meaning = "weight of the layouts made ready that are held in memory")
        @DefaultValue("268435456")
        long landscapeBytes) {

  /** Refuses limits that leave nothing to do. */
  public Limits {
    double[] all = {
      bodyBytes,
      urlCharacters,
      durationS,
      samplesPerTrace,
      followedS,
      previewPixels,
      glowPixels,
      sheetPages,
      bundleBytes,
      animationS,
      gifFrames,
      releases,
      settledReleases,
      oddsReleases,
      oddsRigs,
      sweepPoints,
      sweepReleases,
      occupancySwings,
      fieldPoints,
      filings,
      fieldEvaluations,
      tuningFigures,
      tuningReleases,
      recordingPlaces,
      fitPaths,
      listBytes,
      waitLongestS,
      waitingComputations,
      waitingReleases,
      eventStreams,
      memoryBytes,
      replyBytes,
      storedBytes,
      preparingWork,
      landscapeBytes
    };
    if (Arrays.stream(all).anyMatch(limit -> !(limit > 0)) || waitDefaultS < 0) {
      throw new IllegalArgumentException("every limit under lodeswing.limits must be positive");
    }
  }
}
