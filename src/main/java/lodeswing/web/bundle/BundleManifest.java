package lodeswing.web.bundle;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lodeswing.job.ComputationKey;
import lodeswing.web.body.Body;
import lodeswing.web.layout.LayoutDocument;

/** The list of a bundle's files for a program that checks them or asks for them again. */
final class BundleManifest {

  private BundleManifest() {}

  /**
   * The manifest as JSON.
   *
   * @param page name of the page
   * @param pageBytes how long it is
   * @param pageDigest its SHA-256
   */
  static String of(BundleContents contents, String page, int pageBytes, String pageDigest) {
    LayoutDocument layout = contents.request().layout();
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("layoutId", layout.layoutId());
    layout.title().ifPresent(title -> members.put("title", title));
    members.put("model", layout.model());
    members.put("engineRevision", (double) ComputationKey.ENGINE_REVISION);
    members.put("language", contents.style().locale().toLanguageTag());
    members.put("request", contents.url());
    members.put("release", release(contents));
    List<Body> files = new ArrayList<>();
    files.add(file(page, "text/html;charset=UTF-8", pageBytes, pageDigest, Map.of()));
    for (BundleFile file : contents.files()) {
      Map<String, Object> from = new LinkedHashMap<>();
      from.put("request", file.url());
      if (file.planned().equals(BundleWriter.LAYOUT)) {
        from.put("member", "layout");
      }
      files.add(
          file(
              file.planned().path(),
              file.form().mediaType().toString(),
              file.bytes(),
              file.digest(),
              from));
    }
    members.put("files", files);
    members.put("leftOut", contents.leftOut().stream().map(BundleManifest::leftOut).toList());
    return Body.of(members).toJson() + "\n";
  }

  private static Body file(
      String path, String mediaType, int bytes, String digest, Map<String, Object> from) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("path", path);
    members.put("mediaType", mediaType);
    members.put("bytes", (double) bytes);
    members.put("sha256", digest);
    members.putAll(from);
    return Body.of(members);
  }

  /** In an order of its own: that of Map.of changes with each start of a process. */
  private static Body release(BundleContents contents) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("x", contents.release().x());
    members.put("y", contents.release().y());
    return Body.of(members);
  }

  private static Body leftOut(LeftOut one) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("path", one.planned().path());
    members.put("code", one.code());
    if (!one.detail().isEmpty()) {
      members.put("detail", one.detail());
    }
    members.put("request", one.url());
    return Body.of(members);
  }
}
