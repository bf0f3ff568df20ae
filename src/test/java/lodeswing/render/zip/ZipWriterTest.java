package lodeswing.render.zip;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TimeZone;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;

class ZipWriterTest {

  private static byte[] two() {
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put("zeta/a.txt", "Reef".getBytes(StandardCharsets.UTF_8));
    files.put("alpha.txt", new byte[0]);
    return ZipWriter.write(files);
  }

  @Test
  void filesComeBackInTheirOrder() throws Exception {
    try (var zip = new ZipInputStream(new ByteArrayInputStream(two()))) {
      ZipEntry first = zip.getNextEntry();
      assertEquals("zeta/a.txt", first.getName());
      assertEquals(ZipEntry.STORED, first.getMethod());
      assertArrayEquals("Reef".getBytes(StandardCharsets.UTF_8), zip.readAllBytes());
      assertEquals("alpha.txt", zip.getNextEntry().getName());
      assertEquals(0, zip.readAllBytes().length);
    }
  }

  /**
   * Nothing but what APPNOTE 6.3, sections 4.3.7, 4.3.12 and 4.3.16, asks for: 30 bytes before and
   * 46 after each file beside its name twice, and 22 at the end; so no time zone, no day.
   */
  @Test
  void theArchiveHoldsNothingElse() {
    assertEquals(2 * (30 + 46) + 22 + 2 * (10 + 9) + 4, two().length);
  }

  @Test
  void theTimeZoneHasNoEffect() {
    byte[] here = two();
    TimeZone usual = TimeZone.getDefault();
    try {
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Chatham"));
      assertArrayEquals(here, two());
    } finally {
      TimeZone.setDefault(usual);
    }
  }
}
