package lodeswing.web.basin;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import lodeswing.core.outcome.Ends;
import lodeswing.web.restpoint.RestPlace;

/**
 * Ends of a list as they are stored, without labels, with the layout's rest points.
 *
 * <p>Owns its arrays.
 */
final class StoredEnds {

  private final List<RestPlace> places;
  private final Ends ends;
  private final boolean settled;

  /**
   * Ends of a list.
   *
   * @param places all rest points of the layout
   * @param ends the ends
   * @param settled whether it was asked when each bob had settled
   */
  StoredEnds(List<RestPlace> places, Ends ends, boolean settled) {
    this.places = List.copyOf(places);
    this.ends = ends;
    this.settled = settled;
  }

  List<RestPlace> places() {
    return places;
  }

  int count() {
    return ends.size();
  }

  int end(int i) {
    return ends.end(i);
  }

  double sealedAt(int i) {
    return ends.sealedAt(i);
  }

  double settledAt(int i) {
    return ends.settledAt(i);
  }

  byte[] written() {
    var bytes = new ByteArrayOutputStream(20 * ends.size() + 1_000);
    try (var out = new DataOutputStream(bytes)) {
      RestPlace.write(places, out);
      out.writeInt(ends.size());
      out.writeBoolean(settled);
      for (int i = 0; i < ends.size(); i++) {
        out.writeInt(ends.end(i));
        out.writeDouble(ends.sealedAt(i));
      }
      for (int i = 0; settled && i < ends.size(); i++) {
        out.writeDouble(ends.settledAt(i));
      }
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return bytes.toByteArray();
  }

  static StoredEnds read(byte[] bytes) {
    try (var in = new DataInputStream(new ByteArrayInputStream(bytes))) {
      List<RestPlace> places = RestPlace.read(in);
      Ends ends = new Ends(in.readInt());
      boolean settled = in.readBoolean();
      for (int i = 0; i < ends.size(); i++) {
        ends.set(i, in.readInt(), in.readDouble());
      }
      for (int i = 0; settled && i < ends.size(); i++) {
        ends.settle(i, in.readDouble());
      }
      return new StoredEnds(places, ends, settled);
    } catch (IOException e) {
      throw new UncheckedIOException("a kept result has the form it was written in", e);
    }
  }
}
