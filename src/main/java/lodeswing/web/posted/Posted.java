package lodeswing.web.posted;

import java.util.LinkedHashMap;
import java.util.Map;
import lodeswing.job.ComputationKey;
import lodeswing.web.body.Body;
import lodeswing.web.jobs.Revised;
import lodeswing.web.layout.LayoutDocument;

/**
 * What was asked of a layout in a post, with every default filled in.
 *
 * @param <R> the request itself
 */
public interface Posted<R> extends Revised<R> {

  /** Which resource it was posted to. */
  PostedKind kind();

  /** The layout that it is about. */
  LayoutDocument layout();

  /** What it asks, in its one canonical form, without its layout. */
  Body canonical();

  /** The same, asked of another revision of the engine. */
  R of(int revision);

  /** The same with its layout's id: what is stored under its own. */
  default Body stored() {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("layoutId", layout().layoutId());
    members.putAll(canonical().members());
    return Body.of(members);
  }

  /** Names it, labels included. */
  default String id() {
    return requestKey().id();
  }

  private ComputationKey requestKey() {
    return new ComputationKey(kind().prefix(), kind().word() + "|" + stored().toJson(), revision());
  }

  /** The same, of the revision that an id was made under. */
  default R asNamed(String id) {
    return of(requestKey().revisionOf(id));
  }

  @Override
  default R today() {
    return of(ComputationKey.ENGINE_REVISION);
  }

  @Override
  default String url() {
    return kind().path() + id();
  }
}
