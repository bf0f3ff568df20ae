package lodeswing.web.jobs;

import java.util.function.Function;
import lodeswing.web.problem.Problem;
import org.springframework.stereotype.Component;
import tools.jackson.databind.json.JsonMapper;

/** Writes failures of jobs down as problem documents. */
@Component
public final class FailureDocuments implements Function<Throwable, String> {

  private final JsonMapper json;

  FailureDocuments(JsonMapper json) {
    this.json = json;
  }

  @Override
  public String apply(Throwable failure) {
    return json.writeValueAsString(Problem.of(JobProblems.of(failure)));
  }
}
