package lodeswing.web.safety;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import lodeswing.render.csv.CellText;
import lodeswing.render.csv.CsvDialect;
import lodeswing.render.csv.CsvWriter;
import lodeswing.safety.FluxIndex;
import lodeswing.safety.MagnetKind;
import lodeswing.safety.MagnetSafety;
import lodeswing.safety.SafetyFigure;
import lodeswing.safety.SafetyLimit;
import lodeswing.safety.SafetyNote;
import lodeswing.safety.Severity;
import lodeswing.web.body.Body;
import lodeswing.web.body.Numbers;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import lodeswing.web.representation.TableDialect;

/** Safety notes as document, table, text, page and single values. */
final class SafetyAnswers {

  static final double MM = 1e3;

  private static final double MILLITESLA = 1e3;
  private static final double SQUARE_MM = 1e6;
  private static final int DIGITS = 6;

  private final SafetyNotes notes;
  private final SafetyWords words;
  private final LayoutDocument layout;

  SafetyAnswers(SafetyNotes notes) {
    this.notes = notes;
    this.words = notes.words();
    this.layout = notes.layout();
  }

  /** The answer in a form. */
  Reply in(Representation form, QueryParameters query) {
    return switch (form) {
      case CSV -> Reply.of(form, csv(TableDialect.of(query)));
      case TEXT ->
          query.find(SafetyController.VALUE).map(value -> cell(value, query)).orElse(lines(query));
      case HTML -> Reply.of(form, bytes(SafetyPage.of(notes, query.get(SafetyController.SHORT))));
      default -> Reply.ofJson(form, bytes(json()));
    };
  }

  /** Whole sentences to print: commas stay, so that a decimal comma stays one. */
  private Reply lines(QueryParameters query) {
    List<String> lines = query.get(SafetyController.SHORT) ? notes.shortLines() : notes.fullLines();
    String all = lines.stream().map(CellText::guarded).collect(Collectors.joining("\n", "", "\n"));
    return Reply.of(Representation.TEXT, bytes(all));
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private Reply cell(SafetyValue value, QueryParameters query) {
    return switch (value) {
      case SEVERITY -> Reply.ofWords(gravest().word());
      case FLUX_INDEX -> figure(SafetyFigure.FLUX_INDEX, query);
      case SMALL_PARTS -> figure(SafetyFigure.SMALL_PARTS, query);
      case REACH -> figure(SafetyFigure.IMPLANT_DISTANCE, query);
      case REACH_OF_ALL -> figure(SafetyFigure.IMPLANT_DISTANCE_TOGETHER, query);
      case PINCH -> figure(SafetyFigure.GRIP, query);
    };
  }

  private Severity gravest() {
    return notes.review().notes().stream()
        .map(SafetyNote::severity)
        .min(Comparator.naturalOrder())
        .orElse(Severity.NOTE);
  }

  private Reply figure(SafetyFigure figure, QueryParameters query) {
    return notes.review().notes().stream()
        .flatMap(note -> Optional.ofNullable(note.figures().get(figure)).stream())
        .findFirst()
        .map(value -> Reply.ofFigure(Numbers.shortest(shown(figure, value)), query))
        .orElseGet(() -> Reply.ofWords("none"));
  }

  private static double shown(SafetyFigure figure, double value) {
    return Numbers.toDigits(figure.shown(value), DIGITS);
  }

  static double kilogauss(FluxIndex index) {
    return SafetyFigure.FLUX_INDEX.shown(index.value());
  }

  private byte[] csv(CsvDialect dialect) {
    var out = new StringBuilder();
    try {
      var csv =
          new CsvWriter(
              out, dialect, "code", "severity", "figure", "value", "limit", "text", "source");
      for (SafetyNote note : notes.review().notes()) {
        if (note.figures().isEmpty()) {
          row(csv, note).empty().empty().empty();
          end(csv, note);
        }
        for (Map.Entry<SafetyFigure, Double> own : note.figures().entrySet()) {
          row(csv, note)
              .text(own.getKey().word())
              .number(shown(own.getKey(), own.getValue()), DIGITS);
          OptionalDouble limit = limit(note, own.getKey());
          if (limit.isPresent()) {
            csv.number(limit.getAsDouble(), DIGITS);
          } else {
            csv.empty();
          }
          end(csv, note);
        }
      }
      csv.text("deferral").empty().empty().empty().empty().text(words.deferral()).empty().endRow();
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return bytes(out.toString());
  }

  private static CsvWriter row(CsvWriter csv, SafetyNote note) throws IOException {
    return csv.text(note.code().word()).text(note.severity().word());
  }

  private void end(CsvWriter csv, SafetyNote note) throws IOException {
    csv.text(words.text(note)).text(words.source(note)).endRow();
  }

  /** The greatest limit that a figure is held against, in its unit. */
  private static OptionalDouble limit(SafetyNote note, SafetyFigure figure) {
    return note.limits().stream()
        .filter(limit -> limit.figure() == figure && !limit.ofField())
        .mapToDouble(limit -> shown(figure, limit.value()))
        .max();
  }

  private String json() {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("layoutId", layout.layoutId());
    members.put("model", layout.model());
    members.put("title", words.title());
    members.put("severity", gravest().word());
    members.put("notes", notes.review().notes().stream().map(this::note).toList());
    members.put("magnets", notes.review().magnets().stream().map(this::magnet).toList());
    members.put("lines", notes.shortLines());
    if (!notes.review().needs().isEmpty()) {
      members.put("needs", notes.review().needs());
    }
    members.put("deferral", words.deferral());
    members.put("links", links());
    return Body.of(members).toJson();
  }

  private Body note(SafetyNote note) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("code", note.code().word());
    members.put("severity", note.severity().word());
    members.put("title", words.title(note));
    members.put("text", words.text(note));
    members.put("short", words.brief(note));
    members.put("rule", words.rule(note));
    members.put("source", words.source(note));
    members.put("notCovered", words.notCovered(note));
    Map<String, Object> figures = new LinkedHashMap<>();
    note.figures().forEach((figure, value) -> figures.put(figure.word(), shown(figure, value)));
    members.put("figures", Body.of(figures));
    if (!note.limits().isEmpty()) {
      members.put("limits", note.limits().stream().map(SafetyAnswers::limit).toList());
    }
    if (!note.needs().isEmpty()) {
      members.put("needs", note.needs());
    }
    return Body.of(members);
  }

  private static Body limit(SafetyLimit limit) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("figure", limit.figure().word());
    if (limit.ofField()) {
      members.put("fieldMillitesla", Numbers.toDigits(limit.value() * MILLITESLA, DIGITS));
    } else {
      members.put("value", shown(limit.figure(), limit.value()));
    }
    return Body.of(members);
  }

  private Body magnet(MagnetSafety magnet) {
    Map<String, Object> members = new LinkedHashMap<>();
    MagnetKind kind = magnet.kind();
    members.put("of", kind.bob() ? "/bobMagnet" : "/magnets/" + kind.plate().get(0));
    members.put("count", (double) kind.count());
    members.put("names", words.names(kind, layout.labels()));
    magnet
        .index()
        .ifPresent(
            index -> {
              members.put("smallPart", magnet.smallPart());
              members.put(
                  "fluxIndexKilogaussSquareMm2", Numbers.toDigits(kilogauss(index), DIGITS));
              members.put(
                  "probeReadingMillitesla", Numbers.toDigits(index.reading() * MILLITESLA, DIGITS));
              members.put("poleAreaMm2", Numbers.toDigits(index.area() * SQUARE_MM, DIGITS));
              members.put("overLimit", magnet.over());
            });
    members.put("distanceToHalfMilliteslaMm", Numbers.toDigits(magnet.reach() * MM, DIGITS));
    magnet.pinch().ifPresent(force -> members.put("pinchForceN", Numbers.toDigits(force, DIGITS)));
    return Body.of(members);
  }

  private Body links() {
    Map<String, Object> links = new LinkedHashMap<>();
    String base = "/v1/layouts/" + layout.layoutId();
    links.put("self", base + "/safety-notes");
    links.put("page", base + "/safety-notes?format=html");
    links.put("lines", base + "/safety-notes?format=text&short=true");
    links.put("check", base + "/check");
    links.put("layout", base);
    return Body.of(links);
  }
}
