package lodeswing.web.odds;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import lodeswing.core.chance.EndCounts;
import lodeswing.web.restpoint.RestPlace;

/**
 * Counted ends as they are stored: without labels, with the layout's rest points.
 *
 * @param places all rest points of the layout
 * @param stepError error of a step that was allowed, as a part of the swing
 * @param followed how long each release was followed at most
 * @param hand the ends on the rig itself
 * @param rigs the ends on each varied rig; none where the parts were taken as exact
 */
record StoredOdds(
    List<RestPlace> places,
    double stepError,
    double followed,
    EndCounts hand,
    List<EndCounts> rigs) {

  StoredOdds {
    places = List.copyOf(places);
    rigs = List.copyOf(rigs);
  }

  byte[] written() {
    var bytes = new ByteArrayOutputStream();
    try (var out = new DataOutputStream(bytes)) {
      RestPlace.write(places, out);
      out.writeDouble(stepError);
      out.writeDouble(followed);
      hand.write(out);
      out.writeInt(rigs.size());
      for (EndCounts rig : rigs) {
        rig.write(out);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return bytes.toByteArray();
  }

  static StoredOdds read(byte[] bytes) {
    try (var in = new DataInputStream(new ByteArrayInputStream(bytes))) {
      List<RestPlace> places = RestPlace.read(in);
      double stepError = in.readDouble();
      double followed = in.readDouble();
      EndCounts hand = EndCounts.read(in);
      List<EndCounts> rigs = new ArrayList<>();
      for (int k = in.readInt(); k > 0; k--) {
        rigs.add(EndCounts.read(in));
      }
      return new StoredOdds(places, stepError, followed, hand, rigs);
    } catch (IOException e) {
      throw new UncheckedIOException("a kept result has the form it was written in", e);
    }
  }
}
