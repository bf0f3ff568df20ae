package lodeswing.web.basin;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import lodeswing.analysis.basin.BasinSurvey;
import lodeswing.web.restpoint.RestPlace;

/**
 * A window's survey as it is stored: in SI, without labels, with the layout's rest points.
 *
 * @param survey what was found
 * @param followed how long each release is followed at most
 * @param places all rest points of the layout
 */
record StoredSurvey(BasinSurvey survey, double followed, List<RestPlace> places) {

  StoredSurvey {
    places = List.copyOf(places);
  }

  byte[] written() {
    var bytes = new ByteArrayOutputStream();
    try (var out = new DataOutputStream(bytes)) {
      out.writeInt(survey.deepestZoom());
      out.writeDouble(survey.halfTime());
      out.writeDouble(survey.steadyShare());
      out.writeDouble(followed);
      RestPlace.write(places, out);
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return bytes.toByteArray();
  }

  static StoredSurvey read(byte[] bytes) {
    try (var in = new DataInputStream(new ByteArrayInputStream(bytes))) {
      BasinSurvey survey = new BasinSurvey(in.readInt(), in.readDouble(), in.readDouble());
      return new StoredSurvey(survey, in.readDouble(), RestPlace.read(in));
    } catch (IOException e) {
      throw new UncheckedIOException("a kept result has the form it was written in", e);
    }
  }
}
