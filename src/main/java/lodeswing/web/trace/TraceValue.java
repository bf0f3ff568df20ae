package lodeswing.web.trace;

/** The single values of a trace that a cell of a spreadsheet can ask for. */
enum TraceValue {
  OUTCOME("outcome"),
  SURE("sure"),
  SEALED_AT("sealedAtS"),
  SETTLED_AT("settledAtS"),
  TRUSTED_UNTIL("trustedUntilS"),
  FORETOLD_UNTIL("foretoldUntilS"),
  MAP_OUTCOME("mapOutcome"),
  TRACE_ID("traceId");

  private final String word;

  TraceValue(String word) {
    this.word = word;
  }

  String word() {
    return word;
  }

  /** Whether it is words, which are not read as a figure whatever they begin with. */
  boolean inWords() {
    return this == OUTCOME || this == SURE || this == MAP_OUTCOME || this == TRACE_ID;
  }
}
