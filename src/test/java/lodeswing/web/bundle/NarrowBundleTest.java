package lodeswing.web.bundle;

import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import lodeswing.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** A bundle where much of it is not allowed: the rest is there, and the page says why. */
class NarrowBundleTest {

  /** Nothing among magnets may be made ready. */
  @RegisterExtension
  static final RunningService SERVICE =
      RunningService.shared("lodeswing.limits.preparing-work=1000");

  private static String bundle(String query) {
    String layoutId = SERVICE.given().get("/v1/sample-layouts/three-stations").path("layoutId");
    return "/v1/layouts/" + layoutId + "/bundle?wait=60" + query;
  }

  @Test
  void whatIsTooCostlyLosesNothingElse() throws Exception {
    byte[] archive =
        SERVICE.given().get(bundle("&lang=en")).then().statusCode(200).extract().asByteArray();
    Set<String> names = new TreeSet<>();
    String page = "";
    try (var zip = new ZipInputStream(new ByteArrayInputStream(archive))) {
      for (ZipEntry next = zip.getNextEntry(); next != null; next = zip.getNextEntry()) {
        names.add(next.getName());
        byte[] body = zip.readAllBytes();
        if (next.getName().equals("index.html")) {
          page = new String(body, StandardCharsets.UTF_8);
        }
      }
    }
    assertTrue(names.contains("sheets/placing-sheet.pdf"), names.toString());
    assertTrue(names.contains("pictures/free-swing.svg"), names.toString());
    assertTrue(names.contains("pictures/field-map.svg"), names.toString());
    assertFalse(names.contains("pictures/basin-map.png"), names.toString());
    assertFalse(names.contains("sheets/worksheet.pdf"), names.toString());
    assertTrue(page.contains("It would have taken more work than is allowed."), page);
    assertTrue(page.contains("evaluations of a magnet"), page);
    assertTrue(page.contains("/basin?format=png&amp;width=256"), page);
  }

  @Test
  void aBundleThatIsTooLongSaysSo(@TempDir Path folder) {
    try (RunningService small =
        RunningService.onFolder(folder, "lodeswing.limits.bundle-bytes=1000").start()) {
      String layoutId = small.given().get("/v1/sample-layouts/paper-triangle").path("layoutId");
      small
          .given()
          .get("/v1/layouts/" + layoutId + "/bundle?wait=60&without=basin-map,odds,check,path")
          .then()
          .statusCode(422)
          .body("errors[0].pointer", equalTo("?without"));
    }
  }
}
