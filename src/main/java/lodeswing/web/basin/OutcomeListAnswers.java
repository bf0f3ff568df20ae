package lodeswing.web.basin;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import lodeswing.render.csv.CsvDialect;
import lodeswing.render.csv.CsvWriter;
import lodeswing.web.body.Body;

/** The ends of a list as a document and as a table, in the order asked. */
final class OutcomeListAnswers {

  private final ReleaseList list;
  private final StoredEnds ends;
  private final EndNames names;

  OutcomeListAnswers(ReleaseList list, byte[] result) {
    this.list = list;
    this.ends = StoredEnds.read(result);
    this.names = new EndNames(list.layout(), ends.places());
  }

  byte[] json() {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("outcomesId", list.listId());
    members.put("layoutId", list.layout().layoutId());
    members.put("units", Body.of(new LinkedHashMap<>(list.layout().units())));
    members.put("x", list.releases().numbers("x"));
    members.put("y", list.releases().numbers("y"));
    members.put(
        "outcome",
        IntStream.range(0, ends.count()).mapToObj(i -> names.nameOfEnd(ends.end(i))).toList());
    members.put("sealedAtS", times(ends::sealedAt));
    if (list.settled()) {
      members.put("settledAtS", times(ends::settledAt));
    }
    Map<String, Object> links = new LinkedHashMap<>();
    links.put("self", "/v1/outcomes/" + list.listId());
    links.put("csv", "/v1/outcomes/" + list.listId() + "?format=csv");
    links.put("layout", "/v1/layouts/" + list.layout().layoutId());
    members.put("links", Body.of(links));
    return Body.of(members).toJson().getBytes(StandardCharsets.UTF_8);
  }

  private List<Object> times(IntToDoubleFunction time) {
    List<Object> times = new ArrayList<>(ends.count());
    for (int i = 0; i < ends.count(); i++) {
      double value = time.applyAsDouble(i);
      times.add(Double.isNaN(value) ? Optional.empty() : (Object) BasinWords.time(value));
    }
    return times;
  }

  byte[] csv(CsvDialect dialect) {
    var out = new StringBuilder(40 * ends.count());
    String unit = list.layout().model().equals("bench") ? "_mm" : "";
    List<String> header = new ArrayList<>(List.of("x" + unit, "y" + unit, "outcome"));
    if (list.settled()) {
      header.add("settled_s");
    }
    header.add("sealed_s");
    List<Double> x = list.releases().numbers("x");
    List<Double> y = list.releases().numbers("y");
    try {
      var csv = new CsvWriter(out, dialect, header.toArray(String[]::new));
      for (int i = 0; i < ends.count(); i++) {
        csv.number(x.get(i)).number(y.get(i)).text(names.nameOfEnd(ends.end(i)));
        if (list.settled()) {
          time(csv, ends.settledAt(i));
        }
        time(csv, ends.sealedAt(i));
        csv.endRow();
      }
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static void time(CsvWriter csv, double time) throws IOException {
    if (Double.isNaN(time)) {
      csv.empty();
    } else {
      csv.number(BasinWords.time(time));
    }
  }
}
