package lodeswing.web.bundle;

import lodeswing.web.bundle.BundlePlan.Planned;

/**
 * A file that a bundle does not have.
 *
 * @param planned where it would stand
 * @param code why, as a word of the service's problems, or {@link #UNWANTED}
 * @param detail in a sentence; empty where the request left it out
 * @param url where it would be had by itself
 */
record LeftOut(Planned planned, String code, String detail, String url) {

  /** The request did not want it. */
  static final String UNWANTED = "left-out";
}
