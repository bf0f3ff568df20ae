package lodeswing.web.sweep;

/** What a sweep can measure at each point. */
enum SweepMeasure {
  OUTCOME("outcome", Of.RELEASE, Labelled.NEVER),
  SURE("sure", Of.RELEASE, Labelled.NEVER),
  SEALED("sealedAtS", Of.RELEASE, Labelled.NEVER),
  SETTLED("settledAtS", Of.RELEASE, Labelled.NEVER),
  PERIODS_AT_RELEASE("periodsAtRelease", Of.RELEASE, Labelled.NEVER),
  CHANCE("chance", Of.HAND, Labelled.ALWAYS),
  REPEATABILITY("repeatability", Of.HAND, Labelled.NEVER),
  SHARE("share", Of.MAP, Labelled.ALWAYS),
  BASIN_ENTROPY("basinEntropy", Of.MAP, Labelled.NEVER),
  BOUNDARY_BASIN_ENTROPY("boundaryBasinEntropy", Of.MAP, Labelled.NEVER),
  BOX_DIMENSION("boxDimension", Of.MAP, Labelled.NEVER),
  UNCERTAINTY_EXPONENT("uncertaintyExponent", Of.MAP, Labelled.NEVER),
  PERIODS("periods", Of.LAYOUT, Labelled.NEVER),
  REST_POINTS("restPoints", Of.LAYOUT, Labelled.NEVER),
  BARRIER("barrier", Of.LAYOUT, Labelled.MAYBE),
  CONTACT("contact", Of.LAYOUT, Labelled.NEVER),
  CLEARANCE("clearanceMm", Of.LAYOUT, Labelled.NEVER);

  private final String word;
  private final Of of;
  private final Labelled labelled;

  /** What it is measured of, beside the layout. */
  enum Of {
    LAYOUT,
    RELEASE,
    HAND,
    MAP
  }

  /** Whether it is of one label. */
  enum Labelled {
    NEVER,
    MAYBE,
    ALWAYS
  }

  SweepMeasure(String word, Of of, Labelled labelled) {
    this.word = word;
    this.of = of;
    this.labelled = labelled;
  }

  String word() {
    return word;
  }

  Of of() {
    return of;
  }

  Labelled labelled() {
    return labelled;
  }

  boolean needsRelease() {
    return of == Of.RELEASE || of == Of.HAND;
  }

  /** Whether a textbook layout has it, whose bob has no size. */
  boolean inTextbook() {
    return this != CONTACT && this != CLEARANCE;
  }
}
