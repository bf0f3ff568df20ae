package lodeswing.web.access;

import jakarta.servlet.http.HttpServletRequest;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.springframework.web.context.request.RequestContextHolder;
import org.springframework.web.context.request.ServletRequestAttributes;

/**
 * Who sent a request.
 *
 * @param client names whose budget the request is on: {@code key:} and a key's id, {@code subject:}
 *     and a digest, or {@code address:} and the address, of IPv6 its first 64 bits
 * @param owner names whom private layouts belong to, the same under all keys of one owner; nothing
 *     for callers that cannot be told apart from others behind their address
 * @param scopes what the caller may do
 */
public record Caller(String client, Optional<String> owner, Set<Scope> scopes) {

  private static final String ATTRIBUTE = Caller.class.getName();

  public Caller {
    scopes = Set.copyOf(scopes);
  }

  /** Anybody behind an address, where everybody may read and compute. */
  public static Caller anybody(String address) {
    return new Caller(
        "address:" + address, Optional.empty(), EnumSet.of(Scope.READ, Scope.COMPUTE));
  }

  /** Lets a request be known as this caller's. */
  public void mark(HttpServletRequest request) {
    request.setAttribute(ATTRIBUTE, this);
  }

  /** Who sent a request; anybody behind its address where nothing else was found out. */
  public static Caller of(HttpServletRequest request) {
    return request.getAttribute(ATTRIBUTE) instanceof Caller caller
        ? caller
        : anybody(request.getRemoteAddr());
  }

  /** Who sent the request that this thread answers; nothing on a thread that answers none. */
  public static Optional<Caller> current() {
    return RequestContextHolder.getRequestAttributes() instanceof ServletRequestAttributes request
        ? Optional.of(of(request.getRequest()))
        : Optional.empty();
  }

  /** Whether the caller may do that. */
  public boolean may(Scope scope) {
    return scopes.contains(scope);
  }
}
