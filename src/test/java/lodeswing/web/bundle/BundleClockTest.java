package lodeswing.web.bundle;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.TimeZone;
import lodeswing.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Primary;

/** The same bundle from two services whose clocks are more than a year apart, in two time zones. */
class BundleClockTest {

  private static final int DAYS = 400;

  /** Not marked as a configuration, or every service of the tests would find it and live in it. */
  static class AnotherDay {

    @Bean
    @Primary
    Clock later() {
      return Clock.offset(Clock.systemUTC(), Duration.ofDays(DAYS));
    }
  }

  private static byte[] bundle(RunningService service, int days) throws Exception {
    try (service) {
      service.start();
      long ahead = service.bean(Clock.class).millis() - System.currentTimeMillis();
      assertEquals(days, Math.round(ahead / 86_400_000.0));
      String sample =
          Files.readString(Path.of("src/main/resources/sample-layouts/three-stations.json"));
      String layout =
          service
              .given()
              .contentType("application/json")
              .body(
                  sample
                      .substring(sample.indexOf("\"layout\":") + 9, sample.lastIndexOf('}'))
                      .getBytes(StandardCharsets.UTF_8))
              .post("/v1/layouts")
              .path("layoutId");
      return service
          .given()
          .get("/v1/layouts/" + layout + "/bundle?wait=60&lang=de&mapPixels=24")
          .then()
          .statusCode(200)
          .extract()
          .asByteArray();
    }
  }

  @Test
  void aDayHasNoEffectOnTheBytes(@TempDir Path one, @TempDir Path other) throws Exception {
    byte[] today = bundle(RunningService.onFolder(one), 0);
    TimeZone usual = TimeZone.getDefault();
    try {
      TimeZone.setDefault(TimeZone.getTimeZone("Asia/Kathmandu"));
      RunningService late = RunningService.onFolder(other).with(AnotherDay.class);
      assertArrayEquals(today, bundle(late, DAYS));
    } finally {
      TimeZone.setDefault(usual);
    }
  }
}
