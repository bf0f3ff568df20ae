package lodeswing.web.restpoint;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.rest.RestPoints;
import lodeswing.core.rest.Saddle;
import lodeswing.core.rest.Side;
import lodeswing.core.rest.UnsafeZone;
import lodeswing.job.Computation;
import lodeswing.job.ComputationKey;
import lodeswing.web.landscape.Landscapes;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.layout.LayoutDocument;

/**
 * Rest points as a stored result: keyed by the physics alone, written in SI without labels.
 *
 * @param places the rest points
 * @param passes the saddles between them
 * @param borders the regions in which the model does not hold
 * @param complete whether nothing is known to be missing
 */
record RestPointComputation(
    List<RestPlace> places, List<PassPlace> passes, List<BorderPlace> borders, boolean complete) {

  private static final String KIND = "rest-points";

  /**
   * A saddle as it is stored; sides are rest points by index, -1 for anything else.
   *
   * @param x plan position
   * @param y plan position
   * @param energy potential energy there
   * @param one where the way down leads on one side
   * @param other where it leads on the other side
   */
  record PassPlace(double x, double y, double energy, int one, int other) {}

  /**
   * The lowest place on the rim of a region in which the model does not hold.
   *
   * @param x plan position
   * @param y plan position
   * @param energy potential energy there
   * @param border what happens there
   * @param catches whether the bob would stay there
   */
  record BorderPlace(double x, double y, double energy, String border, boolean catches) {}

  /**
   * The work for a layout.
   *
   * @param place where the layout stands in the request
   */
  static Computation of(LayoutDocument document, Landscapes landscapes, LayoutPlace place) {
    ComputationKey key = new ComputationKey("rst", KIND + "|" + document.physicsKey());
    return new Computation(
            key,
            KIND,
            "/v1/layouts/" + document.layoutId() + "/rest-points",
            progress -> of(landscapes.of(document, place, progress)).written())
        .remadeFrom(document.layoutId())
        .costing(landscapes.costOf(document).restPoints());
  }

  private static RestPointComputation of(Landscape landscape) {
    RestPoints points = landscape.restPoints();
    List<PassPlace> passes = new ArrayList<>();
    for (Saddle saddle : points.saddles()) {
      passes.add(
          new PassPlace(
              saddle.x(),
              saddle.y(),
              saddle.potential(),
              index(saddle.one()),
              index(saddle.other())));
    }
    List<BorderPlace> borders = new ArrayList<>();
    for (UnsafeZone zone : points.zones()) {
      String border = zone.border().name().toLowerCase(Locale.ROOT).replace('_', '-');
      borders.add(new BorderPlace(zone.x(), zone.y(), zone.potential(), border, zone.catches()));
    }
    return new RestPointComputation(
        points.list().stream().map(RestPlace::of).toList(), passes, borders, points.complete());
  }

  private static int index(Side side) {
    return side instanceof Side.OfRestPoint rest ? rest.restPoint() : -1;
  }

  private byte[] written() {
    var bytes = new ByteArrayOutputStream();
    try (var out = new DataOutputStream(bytes)) {
      RestPlace.write(places, out);
      out.writeInt(passes.size());
      for (PassPlace pass : passes) {
        out.writeDouble(pass.x);
        out.writeDouble(pass.y);
        out.writeDouble(pass.energy);
        out.writeInt(pass.one);
        out.writeInt(pass.other);
      }
      out.writeInt(borders.size());
      for (BorderPlace border : borders) {
        out.writeDouble(border.x);
        out.writeDouble(border.y);
        out.writeDouble(border.energy);
        out.writeUTF(border.border);
        out.writeBoolean(border.catches);
      }
      out.writeBoolean(complete);
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return bytes.toByteArray();
  }

  /** Reads what was written. */
  static RestPointComputation read(byte[] bytes) {
    try (var in = new DataInputStream(new ByteArrayInputStream(bytes))) {
      List<RestPlace> places = RestPlace.read(in);
      List<PassPlace> passes = new ArrayList<>();
      for (int k = in.readInt(); k > 0; k--) {
        passes.add(
            new PassPlace(
                in.readDouble(), in.readDouble(), in.readDouble(), in.readInt(), in.readInt()));
      }
      List<BorderPlace> borders = new ArrayList<>();
      for (int k = in.readInt(); k > 0; k--) {
        borders.add(
            new BorderPlace(
                in.readDouble(), in.readDouble(), in.readDouble(), in.readUTF(), in.readBoolean()));
      }
      return new RestPointComputation(places, passes, borders, in.readBoolean());
    } catch (IOException e) {
      throw new UncheckedIOException("a kept result has the form it was written in", e);
    }
  }
}
