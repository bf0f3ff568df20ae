package lodeswing.web.front;

import java.util.List;
import java.util.Optional;
import lodeswing.web.body.ListShape;
import lodeswing.web.body.MapShape;
import lodeswing.web.body.ObjectShape;
import lodeswing.web.body.Shape;
import lodeswing.web.body.TextShape;
import lodeswing.web.openapi.OperationDescription;
import lodeswing.web.openapi.OperationDescription.AnswerText;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What the front door says about itself. */
@Configuration(proxyBeanMethods = false)
class FrontOperations {

  private static final String TAG = "Service";
  private static final Shape TEXT = new TextShape(10_000);

  private static final ObjectShape SERVICE =
      ObjectShape.named("ServiceRoot", "What the service is, and where everything else is.")
          .open()
          .required("name", TEXT, "Its name.")
          .required("description", TEXT, "What it does.")
          .required("apiVersion", TEXT, "Version of the interface, as in its base path.")
          .required("links", new MapShape(TEXT, 40, 200), "Where to go from here.")
          .build();

  private static final ObjectShape LINK_TARGET =
      ObjectShape.named("LinkTarget", "A target of a link (RFC 9264, section 4.2).")
          .open()
          .required("href", TEXT, "Its address, relative to the catalogue's.")
          .optional("type", TEXT, "The media type to expect.")
          .optional("title", TEXT, "What it is.")
          .build();

  private static final ObjectShape CATALOG =
      ObjectShape.named("ApiCatalog", "The service's interfaces (RFC 9727).")
          .open()
          .required(
              "linkset",
              new ListShape(
                  ObjectShape.named("LinkContext", "An interface and its links.")
                      .open()
                      .required("anchor", TEXT, "Base path of the interface.")
                      .required("service-desc", new ListShape(LINK_TARGET, 1, 10), "Its contract.")
                      .required("service-doc", new ListShape(LINK_TARGET, 1, 10), "To read.")
                      .required("service-meta", new ListShape(LINK_TARGET, 1, 10), "Its limits.")
                      .required("start", new ListShape(LINK_TARGET, 1, 10), "Where to begin.")
                      .build(),
                  1,
                  10),
              "One for each interface.")
          .build();

  @Bean
  OperationDescription describeGetService() {
    return new OperationDescription(
            "getService",
            TAG,
            "Say what the service is",
            "Name, description and links for a machine; for a person a page with links for each"
                + " client and the sample layouts, in English, German or Spanish. Link fields lead"
                + " to the contract, its documentation, the limits and the catalogue.",
            List.of(),
            Optional.empty(),
            List.of(new AnswerText(200, "The service.", SERVICE, FrontController.ROOT)),
            List.of())
        .ofNoLayout();
  }

  @Bean
  OperationDescription describeGetApiCatalog() {
    return new OperationDescription(
            "getApiCatalog",
            TAG,
            "List the service's interfaces",
            "The catalogue at its well-known address (RFC 9727), a link set (RFC 9264).",
            List.of(),
            Optional.empty(),
            List.of(new AnswerText(200, "The catalogue.", CATALOG, FrontController.CATALOG)),
            List.of())
        .ofNoLayout();
  }
}
