package lodeswing.web.bundle;

import lodeswing.web.bundle.BundlePlan.Planned;
import lodeswing.web.representation.Representation;

/**
 * A file of a bundle.
 *
 * @param planned where it stands
 * @param form its form
 * @param url where it is had by itself
 * @param bytes of it
 * @param digest SHA-256 in hexadecimal digits
 */
record BundleFile(Planned planned, Representation form, String url, int bytes, String digest) {}
