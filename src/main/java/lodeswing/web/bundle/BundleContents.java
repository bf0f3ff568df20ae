package lodeswing.web.bundle;

import java.util.List;
import lodeswing.web.worksheet.SurePlace;

/**
 * What the page and the manifest of a bundle tell of it.
 *
 * @param request what was asked for
 * @param style how it is written
 * @param release where the bob is let go
 * @param files that it has, in their order
 * @param leftOut files that it has not
 */
record BundleContents(
    BundleRequest request,
    BundleStyle style,
    SurePlace release,
    List<BundleFile> files,
    List<LeftOut> leftOut) {

  BundleContents {
    files = List.copyOf(files);
    leftOut = List.copyOf(leftOut);
  }

  /** The request that gives the same bundle, whatever its headers say. */
  String url() {
    return request.url() + style.query();
  }
}
