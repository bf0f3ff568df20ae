package lodeswing.web.layout;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import lodeswing.job.JobLedger;
import lodeswing.job.Realm;
import lodeswing.job.ResultStore;
import lodeswing.job.StoredResult;
import lodeswing.web.access.Caller;
import lodeswing.web.body.Body;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import org.springframework.stereotype.Component;

/** Keeps layouts by their ids, the samples among them. */
@Component
public final class LayoutStore {
  private static final String KIND = "layout";
  private static final int HELD_IN_MEMORY = 500;

  private final ResultStore store;
  private final JobLedger jobs;
  private final Clock clock;
  private final SampleLayouts samples = SampleLayouts.load();
  private final Cache<String, LayoutDocument> read =
      Caffeine.newBuilder().maximumSize(HELD_IN_MEMORY).build();

  private final Seals seals;

  LayoutStore(ResultStore store, JobLedger jobs, Clock clock, Seals seals) {
    this.store = store;
    this.jobs = jobs;
    this.clock = clock;
    this.seals = seals;
    samples.all().forEach(sample -> save(sample.document()));
  }

  /** The built-in layouts; they are stored like any other. */
  public SampleLayouts samples() {
    return samples;
  }

  /**
   * Reads a layout that a request brings; a private one is the sender's from then on.
   *
   * @param sent as {@link LayoutShapes#REQUEST} has read it
   * @throws ProblemException with every fault, or {@code owner-needed}
   */
  public LayoutDocument read(Body sent) {
    return seals
        .of(sent)
        .map(seal -> LayoutDocument.of(sent, seal))
        .orElseGet(() -> LayoutDocument.of(sent));
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
    if (!document.confined()) {
      read.put(document.layoutId(), canonicalDocument(document));
    }
    return created;
  }

  /** The same layout as it reads back, so that pointers of warnings lead into the stored form. */
  private static LayoutDocument canonicalDocument(LayoutDocument document) {
    return LayoutDocument.of(CanonicalForm.read(document.canonical()));
  }

  /**
   * The layout of an id; one that is another's is not there.
   *
   * @throws ProblemException {@code not-found}
   */
  public LayoutDocument get(String layoutId) {
    LayoutDocument held = read.getIfPresent(layoutId);
    if (held != null) {
      return held;
    }
    LayoutDocument document =
        Optional.of(layoutId)
            .filter(LayoutStore::isOpen)
            .flatMap(store::find)
            .filter(result -> result.kind().equals(KIND))
            .map(result -> LayoutDocument.ofCanonical(result.bytes()))
            .orElseThrow(
                () ->
                    new ProblemException(
                        ProblemCode.NOT_FOUND,
                        "No layout of this id is stored; post the layout again, or take one of"
                            + " /v1/sample-layouts.",
                        List.of()));
    if (!document.confined()) {
      read.put(layoutId, document);
    }
    return document;
  }

  /** The private layouts of an owner, the newest first. */
  List<LayoutDocument> ownedBy(String owner) {
    return store.ownedBy(owner).stream()
        .map(kept -> LayoutDocument.ofCanonical(kept.bytes()))
        .toList();
  }

  /**
   * Deletes a private layout with all that was computed of it, jobs and what was asked included.
   *
   * @throws ProblemException {@code not-found}, or {@code public-layout} for one that is
   *     everybody's
   */
  void delete(String layoutId) {
    LayoutDocument document = get(layoutId);
    if (!document.confined()) {
      throw new ProblemException(
          ProblemCode.PUBLIC_LAYOUT,
          "This layout is everybody's: whoever posts the same one gets this id.",
          List.of());
    }
    Realm realm = Realm.in(layoutId).orElseThrow();
    store.delete(realm);
    jobs.forget(realm);
  }

  /** Whether the sender of the request at hand may know of an id; work that goes on may. */
  private static boolean isOpen(String layoutId) {
    return Caller.current().filter(caller -> Realm.foreignIn(layoutId, caller.owner())).isEmpty();
  }
}
