package lodeswing.web.layout;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import lodeswing.job.ComputationKey;
import lodeswing.job.ResultStore;
import lodeswing.job.StoredResult;
import lodeswing.web.access.Caller;
import lodeswing.web.body.Body;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import org.springframework.stereotype.Component;

/**
 * Seals private layouts: an owner's salt is the HMAC (RFC 2104, with SHA-256) of the owner under a
 * key that is drawn once and kept in the store, for all processes at it.
 */
@Component
final class Seals {

  private static final String ID = "key-of-seals";
  private static final int KEY_BYTES = 32;
  private static final String ALGORITHM = "HmacSHA256";

  private final SecretKeySpec key;

  Seals(ResultStore store, Clock clock) {
    byte[] drawn = new byte[KEY_BYTES];
    new SecureRandom().nextBytes(drawn);
    StoredResult kept =
        store
            .saveIfAbsent(StoredResult.document(ID, "secret", "", drawn, clock.instant()))
            .result();
    key = new SecretKeySpec(kept.bytes(), ALGORITHM);
  }

  /**
   * The seal of a layout that was sent as a private one, for whoever sends the request at hand.
   *
   * @throws ProblemException {@code owner-needed} where nobody can own it
   */
  Optional<Seal> of(Body sent) {
    boolean asked =
        sent.findText(LayoutShapes.VISIBILITY).filter(LayoutShapes.PRIVATE::equals).isPresent();
    return asked ? Optional.of(of(owner(sent))) : Optional.empty();
  }

  private static String owner(Body sent) {
    return Caller.current()
        .flatMap(Caller::owner)
        .orElseThrow(
            () ->
                new ProblemException(
                    ProblemCode.OWNER_NEEDED,
                    "A private layout belongs to whoever stores it, and this request tells no"
                        + " owner.",
                    List.of(
                        new Fault(
                            sent.pointer(LayoutShapes.VISIBILITY),
                            "can be \"private\" only with a key or token; leave it out, or"
                                + " send one"))));
  }

  private Seal of(String owner) {
    try {
      Mac mac = Mac.getInstance(ALGORITHM);
      mac.init(key);
      String hex = HexFormat.of().formatHex(mac.doFinal(owner.getBytes(StandardCharsets.UTF_8)));
      return new Seal(owner, ComputationKey.digest(hex));
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("every Java runtime has HmacSHA256", e);
    }
  }
}
