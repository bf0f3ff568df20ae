package lodeswing.web.trace;

import lodeswing.web.layout.LayoutDocument;

/**
 * What a trace takes where the request is silent.
 *
 * @param durationS how long samples are taken
 * @param sampleIntervalS time between samples
 * @param placingAccuracy how exactly a hand places the bob, in the layout's unit of length
 */
record TraceDefaults(double durationS, double sampleIntervalS, double placingAccuracy) {

  /** A minute's half is what a picture can hold; 50 samples a second draw a smooth line. */
  private static final TraceDefaults BENCH = new TraceDefaults(30, 0.02, 1);

  private static final TraceDefaults TEXTBOOK = new TraceDefaults(100, 0.05, 0.001);

  static TraceDefaults of(LayoutDocument layout) {
    return layout.model().equals("bench") ? BENCH : TEXTBOOK;
  }
}
