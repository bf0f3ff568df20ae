package lodeswing.web.bundle;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.SortedMap;
import java.util.TreeMap;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.worksheet.SurePlace;

/**
 * What a bundle's work found beside the results that are stored by themselves.
 *
 * @param release where the bob is let go
 * @param failed why there is no result, by the id that it would have
 */
record StoredBundle(SurePlace release, SortedMap<String, Reason> failed) {

  /**
   * Why something is not in a bundle.
   *
   * @param detail in a sentence
   */
  record Reason(ProblemCode code, String detail) {}

  byte[] written() {
    var bytes = new ByteArrayOutputStream();
    try (var out = new DataOutputStream(bytes)) {
      out.writeDouble(release.x());
      out.writeDouble(release.y());
      out.writeInt(failed.size());
      for (var one : failed.entrySet()) {
        out.writeUTF(one.getKey());
        out.writeUTF(one.getValue().code().name());
        out.writeUTF(one.getValue().detail());
      }
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return bytes.toByteArray();
  }

  static StoredBundle read(byte[] bytes) {
    try (var in = new DataInputStream(new ByteArrayInputStream(bytes))) {
      var release = new SurePlace(in.readDouble(), in.readDouble());
      SortedMap<String, Reason> failed = new TreeMap<>();
      for (int k = in.readInt(); k > 0; k--) {
        failed.put(in.readUTF(), new Reason(ProblemCode.valueOf(in.readUTF()), in.readUTF()));
      }
      return new StoredBundle(release, failed);
    } catch (IOException e) {
      throw new UncheckedIOException("a kept result has the form it was written in", e);
    }
  }
}
