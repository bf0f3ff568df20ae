package lodeswing.web.check;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.analysis.check.Change;
import lodeswing.analysis.check.CheckCode;
import lodeswing.analysis.check.Finding;
import lodeswing.analysis.check.Verdict;
import lodeswing.core.swing.SmallSwings;
import lodeswing.job.ComputationKey;
import lodeswing.render.csv.CsvDialect;
import lodeswing.render.csv.CsvWriter;
import lodeswing.web.body.Body;
import lodeswing.web.body.Numbers;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import lodeswing.web.representation.TableDialect;

/** A check as document, table and single values. */
final class CheckAnswers {

  private static final int DIGITS = 6;

  private final CheckRequest request;
  private final List<Finding> findings;
  private final CheckWords words;

  CheckAnswers(CheckRequest request, byte[] result) {
    this.request = request;
    this.findings = StoredCheck.read(result);
    this.words = new CheckWords(request.layout());
  }

  /** The answer in a form. */
  Reply in(Representation form, QueryParameters query) {
    return switch (form) {
      case CSV -> Reply.of(form, csv(TableDialect.of(query)));
      case TEXT -> cell(query);
      default -> Reply.ofJson(form, json());
    };
  }

  private Verdict verdict() {
    return Verdict.worst(findings.stream().map(finding -> finding.measure().verdict()).toList());
  }

  private Reply cell(QueryParameters query) {
    CheckValue value = query.find(CheckController.VALUE).orElse(CheckValue.SENTENCE);
    Optional<Finding> line =
        query
            .find(CheckController.LINE)
            .flatMap(code -> findings.stream().filter(f -> f.code() == code).findFirst());
    return line.isPresent() ? cell(line.get(), value, query) : whole(value, query);
  }

  private Reply whole(CheckValue value, QueryParameters query) {
    return switch (value) {
      case VERDICT -> Reply.ofWords(CheckWords.word(verdict()));
      case MASS -> figure(PartsList.mass(request.layout()), query);
      default -> Reply.ofWords(words.sentence(findings));
    };
  }

  private Reply cell(Finding line, CheckValue value, QueryParameters query) {
    CheckCode code = line.code();
    Optional<Change> change = line.change();
    return switch (value) {
      case SENTENCE -> Reply.ofWords(words.reason(line));
      case VERDICT -> Reply.ofWords(CheckWords.word(line.measure().verdict()));
      case FIGURE -> figure(shown(code, line.measure().figure()), query);
      case LIMIT -> figure(shown(code, line.measure().limit()), query);
      case UNIT -> Reply.ofWords(code.unit());
      case CHANGE -> Reply.ofWords(change.map(words::change).orElse("none"));
      case POINTER -> Reply.ofWords(change.map(Change::pointer).orElse("none"));
      case FROM -> change.map(c -> from(c, query)).orElse(Reply.ofWords("none"));
      case TO -> change.map(c -> to(c, query)).orElse(Reply.ofWords("none"));
      case MASS -> figure(PartsList.mass(request.layout()), query);
    };
  }

  private static Reply from(Change change, QueryParameters query) {
    if (change instanceof Change.OfFigure own) {
      return figure(own.from(), query);
    }
    return Reply.ofWords(((Change.OfWord) change).from().orElse("none"));
  }

  private static Reply to(Change change, QueryParameters query) {
    return change instanceof Change.OfFigure own
        ? Reply.ofFigure(Numbers.shortest(own.to()), query)
        : Reply.ofWords(((Change.OfWord) change).to());
  }

  private static Reply figure(OptionalDouble figure, QueryParameters query) {
    return figure.isPresent()
        ? Reply.ofFigure(Numbers.shortest(figure.getAsDouble()), query)
        : Reply.ofWords("none");
  }

  /** A figure in its unit, to six digits. */
  private static OptionalDouble shown(CheckCode code, OptionalDouble figure) {
    return figure.isPresent()
        ? OptionalDouble.of(
            Double.parseDouble(Numbers.plain(code.shown(figure.getAsDouble()))) + 0.0)
        : figure;
  }

  private byte[] csv(CsvDialect dialect) {
    var out = new StringBuilder();
    try {
      var csv =
          new CsvWriter(
              out,
              dialect,
              "code",
              "verdict",
              "figure",
              "limit",
              "unit",
              "change_pointer",
              "change_from",
              "change_to",
              "reason");
      for (Finding line : findings) {
        csv.text(line.code().word()).text(CheckWords.word(line.measure().verdict()));
        number(csv, shown(line.code(), line.measure().figure()));
        number(csv, shown(line.code(), line.measure().limit()));
        csv.text(line.code().unit());
        row(csv, line.change());
        csv.text(words.reason(line)).endRow();
      }
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static void row(CsvWriter csv, Optional<Change> change) throws IOException {
    if (change.isEmpty()) {
      csv.empty().empty().empty();
    } else if (change.get() instanceof Change.OfFigure figure) {
      csv.text(figure.pointer());
      number(csv, figure.from());
      csv.number(figure.to());
    } else if (change.get() instanceof Change.OfWord word) {
      csv.text(word.pointer()).text(word.from().orElse("")).text(word.to());
    }
  }

  private static void number(CsvWriter csv, OptionalDouble figure) throws IOException {
    if (figure.isPresent()) {
      csv.number(figure.getAsDouble(), DIGITS);
    } else {
      csv.empty();
    }
  }

  private byte[] json() {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("layoutId", request.layout().layoutId());
    members.put("model", request.layout().model());
    members.put("units", Body.of(new LinkedHashMap<>(request.layout().units())));
    members.put("radius", request.radius());
    members.put("spread", request.spread());
    members.put("seed", (double) request.seed());
    members.put("verdict", CheckWords.word(verdict()));
    members.put("lines", findings.stream().map(this::line).toList());
    SmallSwings swings = SmallSwings.of(request.layout().layout());
    members.put(
        "periodsS", List.of(Numbers.rounded(swings.periodX()), Numbers.rounded(swings.periodY())));
    swings.lossX().stream()
        .filter(loss -> loss > 0)
        .forEach(loss -> members.put("qualityFactor", Numbers.rounded(swings.rateX() / loss)));
    PartsList.mass(request.layout()).ifPresent(mass -> members.put("massG", mass));
    if (PartsList.has(request.layout())) {
      members.put("parts", PartsList.of(request.layout()));
    }
    members.put("sentence", words.sentence(findings));
    members.put("notes", words.notes(request));
    members.put("engineRevision", (double) ComputationKey.ENGINE_REVISION);
    members.put("links", links());
    return Body.of(members).toJson().getBytes(StandardCharsets.UTF_8);
  }

  private Body line(Finding finding) {
    Map<String, Object> members = new LinkedHashMap<>();
    CheckCode code = finding.code();
    members.put("code", code.word());
    shown(code, finding.measure().figure()).ifPresent(figure -> members.put("figure", figure));
    shown(code, finding.measure().limit()).ifPresent(limit -> members.put("limit", limit));
    members.put("unit", code.unit());
    members.put("verdict", CheckWords.word(finding.measure().verdict()));
    members.put("reason", words.reason(finding));
    if (!finding.measure().needs().isEmpty()) {
      members.put("needs", finding.measure().needs());
    }
    finding.change().ifPresent(change -> members.put("change", change(change)));
    members.put("source", CheckWords.source(code));
    return Body.of(members);
  }

  private Body change(Change change) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("pointer", change.pointer());
    String to;
    if (change instanceof Change.OfFigure figure) {
      figure.from().ifPresent(from -> members.put("from", from));
      members.put("to", figure.to());
      to = Numbers.shortest(figure.to());
    } else {
      Change.OfWord word = (Change.OfWord) change;
      word.from().ifPresent(from -> members.put("from", from));
      members.put("to", word.to());
      to = word.to();
    }
    members.put("sentence", words.change(change));
    members.put(
        "variant",
        request.base()
            + "/variant?"
            + ParameterName.of(change.pointer())
            + "="
            + to.replace(" ", "%20"));
    return Body.of(members);
  }

  private Body links() {
    Map<String, Object> links = new LinkedHashMap<>();
    links.put("self", request.url());
    links.put("csv", request.url() + "&format=csv");
    links.put("restPoints", request.base() + "/rest-points");
    links.put("layout", request.base());
    return Body.of(links);
  }
}
