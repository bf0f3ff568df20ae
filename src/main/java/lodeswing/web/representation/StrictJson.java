package lodeswing.web.representation;

import org.springframework.boot.jackson.autoconfigure.JsonMapperBuilderCustomizer;
import org.springframework.stereotype.Component;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** Reads JSON strictly: no member twice, no unknown member, nothing after the end. */
@Component
final class StrictJson implements JsonMapperBuilderCustomizer {

  @Override
  public void customize(JsonMapper.Builder mapper) {
    mapper
        .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
        .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
        .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);
  }
}
