package lodeswing.web.basin;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lodeswing.job.ComputationKey;
import lodeswing.web.body.Body;
import lodeswing.web.jobs.Revised;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;

/**
 * Releases whose ends are asked for, in the layout's own units.
 *
 * @param layout the layout
 * @param releases columns {@code x, y, vx, vy} of one length
 * @param settled whether settling times are asked for too
 * @param revision of the engine that answers
 */
record ReleaseList(LayoutDocument layout, Body releases, boolean settled, int revision)
    implements Revised<ReleaseList> {

  private static final String KIND = "outcomes";

  /**
   * From a body that {@link OutcomeShapes#REQUEST} has read; missing velocities are 0.
   *
   * @throws ProblemException {@code invalid-request} where columns differ in length, {@code
   *     too-costly} where there are too many
   */
  static ReleaseList of(LayoutDocument layout, Body sent, boolean settled, int most) {
    int count = sent.numbers("x").size();
    List<Fault> faults = new ArrayList<>();
    Map<String, Object> columns = new LinkedHashMap<>();
    for (String name : List.of("x", "y", "vx", "vy")) {
      List<Double> column =
          sent.has(name) ? sent.numbers(name) : java.util.Collections.nCopies(count, 0.0);
      if (column.size() != count) {
        faults.add(
            new Fault(
                "/" + name, "has " + column.size() + " entries; must have as many as x, " + count));
      }
      columns.put(name, column);
    }
    if (!faults.isEmpty()) {
      throw new ProblemException(
          ProblemCode.INVALID_REQUEST, "The columns differ in length.", faults);
    }
    if (count > most) {
      throw new ProblemException(
          ProblemCode.TOO_COSTLY,
          "The list is too long.",
          List.of(
              new Fault(
                  "/x",
                  "has "
                      + count
                      + " releases; lower them to "
                      + most
                      + (settled ? ", or leave settled out" : ""))));
    }
    return new ReleaseList(layout, Body.of(columns), settled, ComputationKey.ENGINE_REVISION);
  }

  int count() {
    return releases.numbers("x").size();
  }

  /** What is stored under the list's id. */
  Body stored() {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("layoutId", layout.layoutId());
    members.put("settled", settled);
    members.putAll(releases.members());
    return Body.of(members);
  }

  /** Names this list with its layout's labels. */
  String listId() {
    return listKey().id();
  }

  private ComputationKey listKey() {
    return new ComputationKey("out", KIND + "|" + stored().toJson(), revision);
  }

  /** The same, of the revision that an id was made under. */
  ReleaseList asNamed(String listId) {
    return new ReleaseList(layout, releases, settled, listKey().revisionOf(listId));
  }

  @Override
  public ReleaseList today() {
    return new ReleaseList(layout, releases, settled, ComputationKey.ENGINE_REVISION);
  }

  @Override
  public String url() {
    return "/v1/outcomes/" + listId();
  }

  /** Names its ends alone: labels do not change them. */
  ComputationKey key(double followed) {
    String list = ComputationKey.digest(releases.toJson());
    return new ComputationKey(
        "end",
        KIND + "|" + followed + "|" + settled + "|" + layout.physicsKey() + "|" + list,
        revision);
  }

  /** The releases in SI: x, y, vx, vy side by side. */
  double[] inSi() {
    double unit = 1 / layout.shownPerUnit();
    double[] all = new double[4 * count()];
    int offset = 0;
    for (String name : List.of("x", "y", "vx", "vy")) {
      List<Double> column = releases.numbers(name);
      for (int i = 0; i < column.size(); i++) {
        all[4 * i + offset] = column.get(i) * unit;
      }
      offset++;
    }
    return all;
  }
}
