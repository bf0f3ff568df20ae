package lodeswing.web.tuning;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import lodeswing.analysis.tuning.Tuned;
import lodeswing.analysis.tuning.TuningResult;
import lodeswing.core.chance.EndCounts;
import lodeswing.web.restpoint.RestPlace;

/**
 * What a tuning found, as it is stored.
 *
 * @param before the rig as it is
 * @param nearest the rigs that come nearest, the nearest first
 * @param tried how many settings were tried
 * @param refused how many settings could not be built
 */
record StoredTuning(Rig before, List<Rig> nearest, int tried, int refused) {

  /**
   * A rig.
   *
   * @param setting steps of each figure
   * @param places all its rest points
   * @param counted ends of the tries of the seed
   * @param confirmed ends of those of another one
   */
  record Rig(
      List<Integer> setting, List<RestPlace> places, EndCounts counted, EndCounts confirmed) {

    Rig {
      setting = List.copyOf(setting);
      places = List.copyOf(places);
    }

    static Rig of(Tuned tuned) {
      return new Rig(
          tuned.setting(),
          tuned.restPoints().stream().map(RestPlace::of).toList(),
          tuned.counted(),
          tuned.confirmed());
    }

    int[] steps() {
      return setting.stream().mapToInt(Integer::intValue).toArray();
    }

    boolean unmoved() {
      return setting.stream().allMatch(step -> step == 0);
    }
  }

  StoredTuning {
    nearest = List.copyOf(nearest);
  }

  static StoredTuning of(TuningResult result) {
    return new StoredTuning(
        Rig.of(result.before()),
        result.nearest().stream().map(Rig::of).toList(),
        result.tried(),
        result.refused());
  }

  byte[] written() {
    var bytes = new ByteArrayOutputStream();
    try (var out = new DataOutputStream(bytes)) {
      write(before, out);
      out.writeInt(nearest.size());
      for (Rig rig : nearest) {
        write(rig, out);
      }
      out.writeInt(tried);
      out.writeInt(refused);
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return bytes.toByteArray();
  }

  private static void write(Rig rig, DataOutputStream out) throws IOException {
    out.writeInt(rig.setting().size());
    for (int step : rig.setting()) {
      out.writeInt(step);
    }
    RestPlace.write(rig.places(), out);
    rig.counted().write(out);
    rig.confirmed().write(out);
  }

  static StoredTuning read(byte[] bytes) {
    try (var in = new DataInputStream(new ByteArrayInputStream(bytes))) {
      Rig before = readRig(in);
      List<Rig> nearest = new ArrayList<>();
      for (int k = in.readInt(); k > 0; k--) {
        nearest.add(readRig(in));
      }
      int tried = in.readInt();
      return new StoredTuning(before, nearest, tried, in.readInt());
    } catch (IOException e) {
      throw new UncheckedIOException("a kept result has the form it was written in", e);
    }
  }

  private static Rig readRig(DataInputStream in) throws IOException {
    List<Integer> setting = new ArrayList<>();
    for (int k = in.readInt(); k > 0; k--) {
      setting.add(in.readInt());
    }
    List<RestPlace> places = RestPlace.read(in);
    EndCounts counted = EndCounts.read(in);
    return new Rig(setting, places, counted, EndCounts.read(in));
  }
}
