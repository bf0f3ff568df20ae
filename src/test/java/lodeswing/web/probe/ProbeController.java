package lodeswing.web.probe;

import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import lodeswing.job.Computation;
import lodeswing.job.ComputationKey;
import lodeswing.job.StoredResult;
import lodeswing.web.jobs.ComputedAnswers;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.representation.CachePolicy;
import lodeswing.web.representation.Negotiation;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import lodeswing.web.representation.Subject;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** Resources for tests of what all resources do alike; only there with {@code probe=true}. */
@RestController
@ConditionalOnProperty("probe")
public final class ProbeController {

  private static final Charset ASCII = StandardCharsets.US_ASCII;
  private static final Parameter<Integer> SIZE = Parameter.integer("size", 1, 100_000).orElse(50);
  private static final Parameter<String> NAME = Parameter.text("name", 40).required();
  private static final Parameter<Double> FIGURE = Parameter.number("figure", -5, 5);

  private final ComputedAnswers answers;
  private final Map<String, CountDownLatch> gates = new ConcurrentHashMap<>();
  private final AtomicInteger computed = new AtomicInteger();

  ProbeController(ComputedAnswers answers) {
    this.answers = answers;
  }

  /** A body that is read whole. */
  public record Posted(int figure) {}

  /** Makes work of a name wait until {@link #open}. */
  public void shut(String name) {
    gates.put(name, new CountDownLatch(1));
  }

  /** Lets work of a name go on. */
  public void open(String name) {
    gates.getOrDefault(name, new CountDownLatch(0)).countDown();
  }

  /** How many pieces of work were computed. */
  public int computed() {
    return computed.get();
  }

  @GetMapping("/probe/body")
  ResponseEntity<byte[]> body(HttpServletRequest request) {
    QueryParameters query = QueryParameters.read(request, SIZE, FIGURE);
    Representation form =
        Negotiation.choose(
            request,
            query,
            List.of(
                Representation.JSON, Representation.CSV, Representation.CBOR, Representation.PNG));
    String digits = "0123456789".repeat(query.get(SIZE) / 10 + 1).substring(0, query.get(SIZE));
    byte[] bytes =
        switch (form) {
          case JSON, CBOR -> ("{\"digits\":\"" + digits + "\",\"half\":0.5}").getBytes(ASCII);
          default -> digits.getBytes(ASCII);
        };
    Reply reply = form == Representation.CBOR ? Reply.ofJson(form, bytes) : Reply.of(form, bytes);
    return reply.cache(CachePolicy.IMMUTABLE).to(request, Subject.NONE);
  }

  @GetMapping("/probe/work")
  ResponseEntity<byte[]> work(HttpServletRequest request) {
    QueryParameters query = QueryParameters.read(request, NAME);
    String name = query.get(NAME);
    var computation =
        new Computation(
            new ComputationKey("prb", name),
            "probe",
            "/probe/work?name=" + name,
            progress -> compute(name, progress));
    return answers.reply(
        request,
        query,
        Subject.NONE,
        computation,
        (StoredResult result) ->
            Reply.of(Representation.JSON, result.bytes()).cache(CachePolicy.SHORT));
  }

  private byte[] compute(String name, Computation.Progress progress) {
    progress.report(0.25);
    while (name.startsWith("endless")) {
      progress.report(0.5);
    }
    try {
      gates.getOrDefault(name, new CountDownLatch(0)).await();
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
    if (name.startsWith("failing")) {
      throw new ProblemException(ProblemCode.TOO_COSTLY, "Ask for less.", List.of());
    }
    return ("{\"name\":\"" + name + "\",\"run\":" + computed.incrementAndGet() + "}")
        .getBytes(ASCII);
  }

  @GetMapping("/probe/{fault}")
  ResponseEntity<byte[]> fail(@PathVariable String fault) {
    return switch (fault) {
      case "broken" -> throw new IllegalStateException("jdbc:secret");
      case "formula" ->
          throw new ProblemException(
              ProblemCode.INVALID_REQUEST, "first,=HYPERLINK(\"x\")\n@SUM(1)\t+1;-2", List.of());
      default -> ResponseEntity.notFound().build();
    };
  }

  @PostMapping(path = "/probe/json", consumes = "application/json")
  Posted post(@RequestBody Posted posted) {
    return posted;
  }
}
