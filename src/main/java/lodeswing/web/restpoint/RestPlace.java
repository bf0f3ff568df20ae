package lodeswing.web.restpoint;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import lodeswing.core.rest.RestPoint;
import lodeswing.core.rest.RestPoint.NearMagnet;

/**
 * A rest point as it is stored: what answers need of it, in SI and without labels.
 *
 * @param index its number, from 0
 * @param x plan position
 * @param y plan position
 * @param energy potential energy there
 * @param barrier energy from there to the lowest way out
 * @param periods the shorter and the longer period of small swings, the latter infinite where the
 *     place stands for a ring
 * @param owner the magnet it lies over
 * @param near up to two magnets, the nearest first
 * @param overWeakField whether every magnet about it pushes the bob away
 */
public record RestPlace(
    int index,
    double x,
    double y,
    double energy,
    double barrier,
    List<Double> periods,
    OptionalInt owner,
    List<NearMagnet> near,
    boolean overWeakField) {

  public RestPlace {
    periods = List.copyOf(periods);
    near = List.copyOf(near);
  }

  /** The id in answers. */
  public String id() {
    return "rest-" + (index + 1);
  }

  /** Whether it stands for a ring about the middle, a round valley: any place of it is as good. */
  public boolean ring() {
    return !Double.isFinite(periods.get(1));
  }

  /** Its distance from the middle, a ring's radius. */
  public double radius() {
    return Math.hypot(x, y);
  }

  /** What is kept of a rest point. */
  public static RestPlace of(RestPoint point) {
    return new RestPlace(
        point.index(),
        point.x(),
        point.y(),
        point.potential(),
        point.barrier().height(),
        List.of(point.smallSwing().shortPeriod(), point.smallSwing().longPeriod()),
        point.surroundings().owner(),
        point.surroundings().nearest(),
        point.surroundings().overWeakField());
  }

  /** Writes a list of places. */
  public static void write(List<RestPlace> places, DataOutputStream out) throws IOException {
    out.writeInt(places.size());
    for (RestPlace place : places) {
      out.writeDouble(place.x);
      out.writeDouble(place.y);
      out.writeDouble(place.energy);
      out.writeDouble(place.barrier);
      out.writeDouble(place.periods.get(0));
      out.writeDouble(place.periods.get(1));
      out.writeInt(place.owner.orElse(-1));
      out.writeBoolean(place.overWeakField);
      out.writeInt(place.near.size());
      for (NearMagnet magnet : place.near) {
        out.writeInt(magnet.magnet());
        out.writeDouble(magnet.distance());
      }
    }
  }

  /** Reads a list of places. */
  public static List<RestPlace> read(DataInputStream in) throws IOException {
    int count = in.readInt();
    List<RestPlace> places = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      double x = in.readDouble();
      double y = in.readDouble();
      double energy = in.readDouble();
      double barrier = in.readDouble();
      List<Double> periods = List.of(in.readDouble(), in.readDouble());
      int owner = in.readInt();
      boolean weak = in.readBoolean();
      List<NearMagnet> near = new ArrayList<>();
      for (int k = in.readInt(); k > 0; k--) {
        near.add(new NearMagnet(in.readInt(), in.readDouble()));
      }
      OptionalInt over = owner < 0 ? OptionalInt.empty() : OptionalInt.of(owner);
      places.add(new RestPlace(i, x, y, energy, barrier, periods, over, near, weak));
    }
    return places;
  }
}
