package lodeswing.web.problem;

import jakarta.servlet.ServletException;
import java.io.IOException;
import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ValveBase;

/**
 * Takes the method TRACE (RFC 9110, section 9.3.8), which no resource has, out of the server's
 * hands: under a name without meaning it is refused as any other method that a resource lacks, and
 * nothing behind can echo a request.
 */
public final class EchoRefusal extends ValveBase {

  /** A valve that lets answers be written later, as streams of events are. */
  public EchoRefusal() {
    super(true);
  }

  private static final String ECHO = "TRACE";
  private static final String NOT_OFFERED = "ECHO";

  @Override
  public void invoke(Request request, Response response) throws IOException, ServletException {
    if (request.getMethod().equals(ECHO)) {
      request.getCoyoteRequest().setMethod(NOT_OFFERED);
    }
    getNext().invoke(request, response);
  }
}
