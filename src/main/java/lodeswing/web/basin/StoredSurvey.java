package lodeswing.web.basin;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import lodeswing.analysis.basin.BasinSurvey;
import lodeswing.analysis.basin.SpecialEnd;
import lodeswing.web.restpoint.RestPlace;

/**
 * A window's survey as it is stored: in SI, without labels, with the layout's rest points.
 *
 * @param survey what was found
 * @param followed how long each release is followed at most
 * @param possible the special ends that its releases can have
 * @param places all rest points of the layout
 */
record StoredSurvey(
    BasinSurvey survey, double followed, Set<SpecialEnd> possible, List<RestPlace> places) {

  /** Raised with every change of the form in which surveys are stored. */
  static final String FORM = "form=2";

  StoredSurvey {
    possible = Set.copyOf(possible);
    places = List.copyOf(places);
  }

  byte[] written() {
    var bytes = new ByteArrayOutputStream();
    try (var out = new DataOutputStream(bytes)) {
      out.writeInt(survey.deepestZoom());
      out.writeDouble(survey.halfTime());
      out.writeDouble(survey.steadyShare());
      out.writeDouble(followed);
      out.writeInt(possible.stream().mapToInt(end -> 1 << end.place()).sum());
      RestPlace.write(places, out);
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return bytes.toByteArray();
  }

  static StoredSurvey read(byte[] bytes) {
    try (var in = new DataInputStream(new ByteArrayInputStream(bytes))) {
      BasinSurvey survey = new BasinSurvey(in.readInt(), in.readDouble(), in.readDouble());
      double followed = in.readDouble();
      int bits = in.readInt();
      Set<SpecialEnd> possible = EnumSet.noneOf(SpecialEnd.class);
      for (SpecialEnd end : SpecialEnd.values()) {
        if ((bits >> end.place() & 1) == 1) {
          possible.add(end);
        }
      }
      return new StoredSurvey(survey, followed, possible, RestPlace.read(in));
    } catch (IOException e) {
      throw new UncheckedIOException("a kept result has the form it was written in", e);
    }
  }
}
