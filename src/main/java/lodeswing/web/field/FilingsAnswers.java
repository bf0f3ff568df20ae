package lodeswing.web.field;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import lodeswing.analysis.field.Filings;
import lodeswing.figure.Drawing;
import lodeswing.job.ComputationKey;
import lodeswing.web.body.Body;
import lodeswing.web.representation.DrawnReply;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;

/** Filings as picture, document and single values. */
final class FilingsAnswers {

  static final String[] VALUES = {"sentence", "drawn", "seed"};

  private final FieldRequest request;
  private final FieldSubject.Strewn subject;
  private final StoredField stored;
  private final Filings.Strewn filings;
  private final FieldWords words;

  FilingsAnswers(FieldRequest request, StoredField stored) {
    this.request = request;
    this.subject = (FieldSubject.Strewn) request.subject();
    this.stored = stored;
    this.filings = stored.filings();
    this.words = new FieldWords(request);
  }

  Reply in(Representation form, QueryParameters query, String value) {
    return switch (form) {
      case TEXT -> cell(value, query);
      case JSON, CBOR -> Reply.ofJson(form, json());
      default -> DrawnReply.of(form, drawing(), query);
    };
  }

  private List<ShownSpot> shown() {
    return ShownSpot.ofBoth(stored.spots(), words.neighbours());
  }

  private String sentence() {
    return (words.filings(filings.count(), filings.weak())
            + " "
            + words.marked(shown(), subject.spots()))
        .strip();
  }

  private Drawing drawing() {
    return new FieldPictures(request, words).filings(filings, shown(), sentence());
  }

  private Reply cell(String value, QueryParameters query) {
    return switch (value) {
      case "drawn" -> Reply.ofFigure(Integer.toString(filings.count()), query);
      case "seed" -> Reply.ofFigure(Integer.toString(subject.seed()), query);
      default -> Reply.ofWords(words.filings(filings.count(), filings.weak()));
    };
  }

  private byte[] json() {
    Map<String, Object> members = FieldUnits.head(request);
    members.put("count", (double) subject.count());
    members.put("seed", (double) subject.seed());
    members.put("drawn", (double) filings.count());
    members.put("weakMillitesla", FieldUnits.strength(filings.weak()));
    if (subject.spots()) {
      members.put("weakSpots", SpotTable.bodies(words, shown()));
    }
    members.put("sentence", sentence());
    members.put(
        "notes", List.of(FieldWords.BOB_LEFT_OUT, FieldWords.MODEL, FieldWords.FILINGS_CAUTION));
    members.put("engineRevision", (double) ComputationKey.ENGINE_REVISION);
    members.put("links", FieldUnits.links(request, false));
    return Body.of(members).toJson().getBytes(StandardCharsets.UTF_8);
  }
}
