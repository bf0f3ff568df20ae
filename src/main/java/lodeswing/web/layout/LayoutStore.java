package lodeswing.web.layout;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.List;
import lodeswing.job.ResultStore;
import lodeswing.job.StoredResult;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import org.springframework.stereotype.Component;

/** Keeps layouts by their ids, the samples among them. */
@Component
public final class LayoutStore {
  private static final String KIND = "layout";
  private static final int HELD_IN_MEMORY = 500;

  private final ResultStore store;
  private final Clock clock;
  private final SampleLayouts samples = SampleLayouts.load();
  private final Cache<String, LayoutDocument> read =
      Caffeine.newBuilder().maximumSize(HELD_IN_MEMORY).build();

  LayoutStore(ResultStore store, Clock clock) {
    this.store = store;
    this.clock = clock;
    samples.all().forEach(sample -> save(sample.document()));
  }

  /** The built-in layouts; they are stored like any other. */
  public SampleLayouts samples() {
    return samples;
  }

  /**
   * Keeps a layout.
   *
   * @return whether it was new
   */
  public boolean save(LayoutDocument document) {
    String canonical = document.canonical().toJson();
    boolean created =
        store
            .saveIfAbsent(
                StoredResult.document(
                    document.layoutId(),
                    KIND,
                    canonical,
                    canonical.getBytes(StandardCharsets.UTF_8),
                    clock.instant()))
            .created();
    read.put(document.layoutId(), canonicalDocument(document));
    return created;
  }

  /** The same layout as it reads back, so that pointers of warnings lead into the stored form. */
  private static LayoutDocument canonicalDocument(LayoutDocument document) {
    return LayoutDocument.of(CanonicalForm.read(document.canonical()));
  }

  /**
   * The layout of an id.
   *
   * @throws ProblemException {@code not-found}
   */
  public LayoutDocument get(String layoutId) {
    LayoutDocument held = read.getIfPresent(layoutId);
    if (held != null) {
      return held;
    }
    LayoutDocument document =
        store
            .find(layoutId)
            .filter(result -> result.kind().equals(KIND))
            .map(result -> LayoutDocument.ofCanonical(result.bytes()))
            .orElseThrow(
                () ->
                    new ProblemException(
                        ProblemCode.NOT_FOUND,
                        "No layout of this id is stored; post the layout again, or take one of"
                            + " /v1/sample-layouts.",
                        List.of()));
    read.put(layoutId, document);
    return document;
  }
}
