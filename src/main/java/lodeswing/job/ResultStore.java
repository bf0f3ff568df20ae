package lodeswing.job;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/** Where results outlive the process. */
public interface ResultStore {

  /** The result with an id, or nothing if it is not kept or no longer whole. */
  Optional<StoredResult> find(String id);

  /**
   * Keeps a result unless a whole one of its id is kept already; the first one wins.
   *
   * @param cost how long computing it took
   * @return what is kept under the id from now on
   */
  Saved saveIfAbsent(StoredResult result, Duration cost);

  /** Keeps a document, which no computing can make again. */
  default Saved saveIfAbsent(StoredResult document) {
    return saveIfAbsent(document, Duration.ZERO);
  }

  /** The private layouts of an owner, the newest first. */
  List<StoredResult> ownedBy(String owner);

  /**
   * Deletes a private layout with all that belongs to it; what is still computed of it is not kept.
   *
   * @return whether it was there
   */
  boolean delete(Realm realm);

  /** Hears that a kept result was used without being looked up. */
  void used(StoredResult result);

  /**
   * Drops results of least worth where there are too many, soon and on another thread; documents
   * stay.
   *
   * @param needed ids of results that must stay, asked for whenever some are dropped
   */
  void makeRoom(Supplier<Set<String>> needed);

  /**
   * What is kept after saving.
   *
   * @param result the kept result, which may be an earlier one
   * @param created whether this call put it there
   */
  record Saved(StoredResult result, boolean created) {}
}
