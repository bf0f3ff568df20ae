package lodeswing;

import io.restassured.RestAssured;
import io.restassured.specification.RequestSpecification;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.boot.web.server.context.WebServerApplicationContext;
import org.springframework.context.ConfigurableApplicationContext;

/**
 * The real service on a free port with a data folder of its own.
 *
 * <pre>{@code
 * @RegisterExtension static final RunningService SERVICE = RunningService.shared();
 * }</pre>
 *
 * <p>Classes that ask for the same settings share one start, which ends with the last test. {@link
 * #onFolder} makes one that a test starts, stops and starts again on the same folder.
 */
public final class RunningService implements BeforeAllCallback, BeforeEachCallback, AutoCloseable {

  private static final Namespace SHARED = Namespace.create(RunningService.class);

  private final List<String> settings;
  private List<Class<?>> sources = List.of(LodeswingApplication.class);
  private @Nullable Path folder;
  private @Nullable ConfigurableApplicationContext context;
  private @Nullable RunningService shared;
  private Optional<ContractProxy> proxy = Optional.empty();

  private RunningService(List<String> settings) {
    this.settings = settings;
  }

  /**
   * The service shared by every test class with these settings.
   *
   * @param settings Spring Boot properties as {@code name=value}
   */
  public static RunningService shared(String... settings) {
    return new RunningService(List.of(settings));
  }

  /** A service of the test's own on a given folder, not started yet. */
  public static RunningService onFolder(Path folder, String... settings) {
    var own = new RunningService(List.of(settings));
    own.folder = folder;
    return own;
  }

  /** This service, which is not started yet, with another source of beans beside its own. */
  public RunningService with(Class<?> source) {
    sources = List.of(LodeswingApplication.class, source);
    return this;
  }

  @Override
  public void beforeAll(ExtensionContext test) {
    shared =
        test.getRoot()
            .getStore(SHARED)
            .getOrComputeIfAbsent(settings, RunningService::started, RunningService.class);
    pointRestAssured();
  }

  @Override
  public void beforeEach(ExtensionContext test) {
    pointRestAssured();
  }

  private static RunningService started(List<String> settings) {
    try {
      return onFolder(Files.createTempDirectory("lodeswing-"), settings.toArray(String[]::new))
          .start();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Starts the service. */
  public RunningService start() {
    var properties = new LinkedHashMap<String, String>();
    properties.put("server.port", "0");
    properties.put("lodeswing.data-folder", folder().toString());
    properties.put("logging.level.root", "WARN");
    properties.put("spring.main.banner-mode", "off");
    properties.put("server.shutdown", "immediate");
    properties.put("lodeswing.warm-up", "false");
    for (String setting : settings) {
      int equals = setting.indexOf('=');
      properties.put(setting.substring(0, equals), setting.substring(equals + 1));
    }
    context =
        new SpringApplicationBuilder(sources.toArray(Class<?>[]::new))
            .run(
                properties.entrySet().stream()
                    .map(property -> "--" + property.getKey() + "=" + property.getValue())
                    .toArray(String[]::new));
    proxy = ContractProxy.before(port());
    return this;
  }

  /** Stops the service; its folder stays. */
  public void stop() {
    proxy.ifPresent(ContractProxy::close);
    proxy = Optional.empty();
    running().close();
    context = null;
  }

  /** Stops the service and starts it again on the same folder, on another port. */
  public void restart() {
    stop();
    start();
  }

  @Override
  public void close() {
    if (context != null) {
      stop();
    }
  }

  /** The service's address without a path. */
  public String uri() {
    return "http://localhost:" + port();
  }

  /** The port it listens on. */
  public int port() {
    if (shared != null) {
      return shared.port();
    }
    return Objects.requireNonNull(((WebServerApplicationContext) running()).getWebServer())
        .getPort();
  }

  /** The folder it keeps its data in. */
  public Path folder() {
    return shared != null ? shared.folder() : Objects.requireNonNull(folder);
  }

  /** A bean of the running service, for what cannot be seen over HTTP. */
  public <T> T bean(Class<T> type) {
    return shared != null ? shared.bean(type) : running().getBean(type);
  }

  /** A request to this service. */
  public RequestSpecification given() {
    return RestAssured.given().baseUri("http://localhost").port(askedPort());
  }

  private void pointRestAssured() {
    RestAssured.baseURI = "http://localhost";
    if (System.getProperty("contract.prism") != null) {
      RestAssured.replaceFiltersWith(new ContractProxy.Report());
      RestAssured.config = ContractProxy.impatient();
    }
    RestAssured.port = askedPort();
  }

  /** Where tests send their requests: to the service, or through what judges its answers. */
  private int askedPort() {
    if (shared != null) {
      return shared.askedPort();
    }
    return proxy.map(ContractProxy::port).orElseGet(this::port);
  }

  private ConfigurableApplicationContext running() {
    return Objects.requireNonNull(context, "the service has not been started");
  }
}
