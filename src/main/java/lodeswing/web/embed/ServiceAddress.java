package lodeswing.web.embed;

import jakarta.servlet.http.HttpServletRequest;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.Locale;
import java.util.Optional;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/**
 * The address under which other sites reach the service, for what they copy from it.
 *
 * <p>The setting {@code lodeswing.embed.public-address} names it, such as {@code
 * https://lodeswing.example}. Without it the address is the one that the request was sent to, which
 * a proxy that ends TLS would tell wrongly; so no answer that holds it may be kept unasked.
 */
@Component
final class ServiceAddress {

  private static final int HTTP = 80;
  private static final int HTTPS = 443;

  private final Optional<String> named;

  ServiceAddress(@Value("${lodeswing.embed.public-address}") String named) {
    this.named =
        named.isBlank()
            ? Optional.empty()
            : Optional.of(
                origin(named.strip())
                    .orElseThrow(
                        () ->
                            new IllegalArgumentException(
                                "lodeswing.embed.public-address is no address such as"
                                    + " https://lodeswing.example: "
                                    + named)));
  }

  /** Scheme, host and, where it is not the usual one, port; no slash at the end. */
  String of(HttpServletRequest request) {
    return named.orElseGet(
        () -> origin(request.getScheme(), request.getServerName(), request.getServerPort()));
  }

  /** The origin of an address of the web (RFC 6454, section 4); empty for anything else. */
  static Optional<String> origin(String address) {
    try {
      URI uri = new URI(address);
      String scheme = uri.getScheme() == null ? "" : uri.getScheme().toLowerCase(Locale.ROOT);
      boolean web = scheme.equals("http") || scheme.equals("https");
      return web && uri.getHost() != null && uri.getRawUserInfo() == null
          ? Optional.of(origin(scheme, uri.getHost(), uri.getPort()))
          : Optional.empty();
    } catch (URISyntaxException e) {
      return Optional.empty();
    }
  }

  private static String origin(String scheme, String host, int port) {
    boolean usual = port < 0 || port == (scheme.equals("https") ? HTTPS : HTTP);
    return scheme + "://" + host.toLowerCase(Locale.ROOT) + (usual ? "" : ":" + port);
  }
}
