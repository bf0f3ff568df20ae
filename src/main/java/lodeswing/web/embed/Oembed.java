package lodeswing.web.embed;

import static lodeswing.web.embed.EmbeddedFigure.escaped;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import lodeswing.web.body.Body;

/**
 * How to embed a figure's page, for platforms that are given its address (oEmbed 1.0, sections 2.3
 * and 2.3.4.4): a {@code rich} answer whose markup is a frame.
 *
 * @param figure the figure
 * @param origin the service's address
 * @param width of the frame [px]
 * @param height of the frame [px]
 */
record Oembed(EmbeddedFigure figure, String origin, int width, int height) {

  /** Size of the frame where nothing narrower is asked for [px]. */
  static final int WIDTH = 640;

  static final int HEIGHT = 960;

  /** What no XML document may hold (XML 1.0, section 2.2). */
  private static final Pattern NO_XML =
      Pattern.compile("[^\\t\\n\\r\\x20-\\uD7FF\\uE000-\\uFFFD\\x{10000}-\\x{10FFFF}]");

  private static final int THUMBNAIL = 256;
  private static final int LEAST_THUMBNAIL = 16;
  private static final double DAY = 86_400;

  /** Its address for a page, without the host. */
  static String path(String page, String form) {
    return "/oembed?url=" + URLEncoder.encode(page, StandardCharsets.UTF_8) + "&format=" + form;
  }

  private Map<String, Object> members() {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("version", "1.0");
    members.put("type", "rich");
    members.put("title", figure.title());
    members.put("provider_name", "Lodeswing");
    members.put("provider_url", origin + "/");
    members.put("cache_age", DAY);
    int side = Math.min(THUMBNAIL, Math.min(width, height));
    if (side >= LEAST_THUMBNAIL) {
      members.put("thumbnail_url", origin + figure.picture(side));
      members.put("thumbnail_width", (double) side);
      members.put("thumbnail_height", (double) side);
    }
    members.put("html", figure.iframe(origin, width, height));
    members.put("width", (double) width);
    members.put("height", (double) height);
    return members;
  }

  byte[] json() {
    return Body.of(members()).toJson().getBytes(StandardCharsets.UTF_8);
  }

  byte[] xml() {
    String members =
        members().entrySet().stream()
            .map(one -> "<%1$s>%2$s</%1$s>\n".formatted(one.getKey(), written(one.getValue())))
            .collect(Collectors.joining());
    return ("<?xml version=\"1.0\" encoding=\"utf-8\" standalone=\"yes\"?>\n<oembed>\n"
            + members
            + "</oembed>\n")
        .getBytes(StandardCharsets.UTF_8);
  }

  private static String written(Object value) {
    return value instanceof Double number
        ? Long.toString(Math.round(number))
        : escaped(NO_XML.matcher(value.toString()).replaceAll("\uFFFD"));
  }
}
