package lodeswing.web.front;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import lodeswing.web.body.Body;
import lodeswing.web.representation.Reply;

/**
 * Where a visitor goes on from the root: relations of RFC 8631 and RFC 9727, and one of the
 * registered general ones for what has none of its own.
 */
enum FrontLink {
  SERVICE_DESC(
      "contract", "service-desc", "/v3/api-docs", "application/json", "The contract (OpenAPI 3.1)"),
  SERVICE_DESC_YAML(
      "contractYaml",
      "service-desc",
      "/v3/api-docs.yaml",
      "application/vnd.oai.openapi",
      "The contract (OpenAPI 3.1)"),
  SERVICE_DOC("documentation", "service-doc", "/docs", "text/html", "The contract to read"),
  PROBLEMS("problems", "service-doc", "/problems", "text/html", "What each error means"),
  SERVICE_META("limits", "service-meta", "/v1/limits", "application/json", "Every limit"),
  API_CATALOG(
      "apiCatalog",
      "api-catalog",
      "/.well-known/api-catalog",
      "application/linkset+json",
      "The catalogue of interfaces"),
  SAMPLES("samples", "start", "/v1/sample-layouts", "application/json", "Layouts to start from");

  private final String member;
  private final String relation;
  private final String url;
  private final String type;
  private final String title;

  FrontLink(String member, String relation, String url, String type, String title) {
    this.member = member;
    this.relation = relation;
    this.url = url;
    this.type = type;
    this.title = title;
  }

  /** Its name in the root's document. */
  String member() {
    return member;
  }

  /** Its relation. */
  String relation() {
    return relation;
  }

  /** Its address. */
  String url() {
    return url;
  }

  /** A reply with this link. */
  Reply addedTo(Reply reply) {
    return reply.link(relation, url);
  }

  /** The link as a target of a link set (RFC 9264, section 4.2); none for the set itself. */
  Optional<Body> target() {
    if (this == API_CATALOG) {
      return Optional.empty();
    }
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("href", url);
    members.put("type", type);
    members.put("title", title);
    return Optional.of(Body.of(members));
  }
}
