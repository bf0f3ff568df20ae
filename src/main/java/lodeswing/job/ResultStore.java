package lodeswing.job;

import java.util.Optional;

/** Where results outlive the process. */
public interface ResultStore {

  /** The result with an id, or nothing if it is not kept or no longer whole. */
  Optional<StoredResult> find(String id);

  /**
   * Keeps a result unless one of its id is kept already; the first one wins.
   *
   * @return what is kept under the id from now on
   */
  Saved saveIfAbsent(StoredResult result);

  /**
   * What is kept after saving.
   *
   * @param result the kept result, which may be an earlier one
   * @param created whether this call put it there
   */
  record Saved(StoredResult result, boolean created) {}
}
