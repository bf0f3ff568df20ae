package lodeswing.config;

import java.time.Duration;
import java.util.List;
import org.springframework.web.cors.CorsConfiguration;
import org.springframework.web.cors.CorsConfigurationSource;
import org.springframework.web.cors.UrlBasedCorsConfigurationSource;

/** Which browser pages may ask, and what they may read. */
final class CrossOriginRules {

  private static final List<String> EXPOSED =
      List.of(
          "ETag",
          "Location",
          "Link",
          "Retry-After",
          "RateLimit",
          "RateLimit-Policy",
          "Preference-Applied",
          "Cache-Status",
          "Server-Timing",
          "Content-Range",
          "Deprecation",
          "Sunset");

  private CrossOriginRules() {}

  static CorsConfigurationSource source(List<String> origins) {
    var rules = new CorsConfiguration();
    rules.setAllowedOrigins(origins);
    rules.setAllowedMethods(List.of("GET", "HEAD", "POST", "DELETE"));
    rules.setAllowedHeaders(List.of("*"));
    rules.setExposedHeaders(EXPOSED);
    rules.setMaxAge(Duration.ofHours(1));
    var source = new UrlBasedCorsConfigurationSource();
    source.registerCorsConfiguration("/**", rules);
    return source;
  }
}
