package lodeswing.web.worksheet;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import lodeswing.analysis.worksheet.TriedPlace;
import lodeswing.core.chance.EndCounts;
import lodeswing.sheet.WorksheetFacts;
import lodeswing.web.restpoint.RestPlace;

/**
 * The figures behind a worksheet as they are stored, in SI and without labels.
 *
 * @param places the layout's rest points
 * @param reach releases lie within this distance of the middle [m]
 * @param aims places that pupils let go at
 * @param pair a place whose end is as sure as any, and one whose end is not
 * @param anywhere ends of releases from anywhere within reach
 * @param spots weak spots over the magnets
 */
record StoredFigures(
    List<RestPlace> places,
    double reach,
    List<TriedPlace> aims,
    List<TriedPlace> pair,
    EndCounts anywhere,
    List<WorksheetFacts.Spot> spots) {

  StoredFigures {
    places = List.copyOf(places);
    aims = List.copyOf(aims);
    pair = List.copyOf(pair);
    spots = List.copyOf(spots);
  }

  byte[] written() {
    var bytes = new ByteArrayOutputStream();
    try (var out = new DataOutputStream(bytes)) {
      RestPlace.write(places, out);
      out.writeDouble(reach);
      write(aims, out);
      write(pair, out);
      anywhere.write(out);
      out.writeInt(spots.size());
      for (WorksheetFacts.Spot spot : spots) {
        out.writeDouble(spot.x());
        out.writeDouble(spot.y());
        out.writeDouble(spot.strength());
      }
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return bytes.toByteArray();
  }

  private static void write(List<TriedPlace> places, DataOutputStream out) throws IOException {
    out.writeInt(places.size());
    for (TriedPlace place : places) {
      out.writeDouble(place.x());
      out.writeDouble(place.y());
      place.ends().write(out);
    }
  }

  static StoredFigures read(byte[] bytes) {
    try (var in = new DataInputStream(new ByteArrayInputStream(bytes))) {
      List<RestPlace> places = RestPlace.read(in);
      double reach = in.readDouble();
      List<TriedPlace> aims = readPlaces(in);
      List<TriedPlace> pair = readPlaces(in);
      EndCounts anywhere = EndCounts.read(in);
      List<WorksheetFacts.Spot> spots = new ArrayList<>();
      for (int k = in.readInt(); k > 0; k--) {
        spots.add(new WorksheetFacts.Spot(in.readDouble(), in.readDouble(), in.readDouble()));
      }
      return new StoredFigures(places, reach, aims, pair, anywhere, spots);
    } catch (IOException e) {
      throw new UncheckedIOException("a kept result has the form it was written in", e);
    }
  }

  private static List<TriedPlace> readPlaces(DataInputStream in) throws IOException {
    List<TriedPlace> places = new ArrayList<>();
    for (int k = in.readInt(); k > 0; k--) {
      places.add(new TriedPlace(in.readDouble(), in.readDouble(), EndCounts.read(in)));
    }
    return places;
  }
}
