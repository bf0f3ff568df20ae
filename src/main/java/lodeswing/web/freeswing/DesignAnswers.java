package lodeswing.web.freeswing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lodeswing.analysis.freeswing.RatioDesign;
import lodeswing.analysis.freeswing.WholeRatio;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.suspension.HookedBar;
import lodeswing.core.suspension.Suspension;
import lodeswing.core.suspension.Yoke;
import lodeswing.core.swing.SmallSwings;
import lodeswing.job.ComputationKey;
import lodeswing.render.csv.CsvDialect;
import lodeswing.render.csv.CsvWriter;
import lodeswing.web.body.Body;
import lodeswing.web.body.Numbers;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import lodeswing.web.representation.TableDialect;

/** The suspensions that give a wanted ratio, as document, table and single values. */
final class DesignAnswers {

  private static final String NONE = "none";
  private static final double MM = 1000;

  private final LayoutDocument asked;
  private final WholeRatio ratio;
  private final List<BuiltDesign> designs;
  private final String self;

  /**
   * Answers for a layout.
   *
   * @param asked the layout
   * @param ratio the wanted ratio
   * @param designs one or more
   * @param self the address of this answer
   */
  DesignAnswers(LayoutDocument asked, WholeRatio ratio, List<BuiltDesign> designs, String self) {
    this.asked = asked;
    this.ratio = ratio;
    this.designs = List.copyOf(designs);
    this.self = self;
  }

  /** The answer in a form. */
  Reply in(Representation form, QueryParameters query) {
    return switch (form) {
      case CSV -> Reply.of(form, csv(TableDialect.of(query)));
      case TEXT -> cell(query);
      default -> Reply.ofJson(form, json());
    };
  }

  private Reply cell(QueryParameters query) {
    BuiltDesign first = designs.get(0);
    DesignValue value = query.find(DesignController.VALUE).orElse(DesignValue.SENTENCE);
    return switch (value) {
      case SENTENCE -> Reply.ofWords(sentence(first));
      case LAYOUT_ID -> Reply.ofWords(first.layout().layoutId());
      default -> {
        OptionalDouble figure = figure(first, value);
        yield figure.isPresent()
            ? Reply.ofFigure(Numbers.shortest(figure.getAsDouble()), query)
            : Reply.ofWords(NONE);
      }
    };
  }

  private OptionalDouble figure(BuiltDesign built, DesignValue value) {
    RatioDesign design = built.design();
    boolean yoke = design.suspension() instanceof Yoke;
    OptionalDouble none = OptionalDouble.empty();
    return switch (value) {
      case SENTENCE, LAYOUT_ID -> none;
      case YOKE_DROP -> yoke ? length(((Yoke) design.suspension()).drop()) : none;
      case LEG -> yoke ? length(((Yoke) design.suspension()).leg()) : none;
      case HOOK_OFFSET -> yoke ? none : length(((HookedBar) design.suspension()).hookOffset());
      case YOKE_DROP_HAND -> yoke ? hand(design.upper()) : none;
      case LEG_HAND -> design.leg().isPresent() ? hand(design.leg().getAsDouble()) : none;
      case HOOK_OFFSET_HAND -> yoke ? none : hand(design.upper());
      case CLOSES_AFTER ->
          OptionalDouble.of(
              Numbers.rounded(ratio.closesAfter(SmallSwings.of(built.layout().layout()))));
      case TIGHT_UP_TO -> yoke ? length(RatioDesign.tightUpTo((Yoke) design.suspension())) : none;
    };
  }

  private static OptionalDouble length(double metres) {
    return OptionalDouble.of(BuiltDesign.millimetres(metres));
  }

  /** Empty where the length hardly matters: then the hand need not be told. */
  private OptionalDouble hand(double sensitivity) {
    double metres = sensitivity > 0 ? RatioDesign.hand(ratio, sensitivity) : 1;
    return metres < 1 ? length(metres) : OptionalDouble.empty();
  }

  private String sentence(BuiltDesign built) {
    String figures =
        built.design().suspension() instanceof Yoke
            ? "a drop of "
                + millimetres(built, DesignValue.YOKE_DROP)
                + " and a leg of "
                + millimetres(built, DesignValue.LEG)
            : "a hook offset of " + millimetres(built, DesignValue.HOOK_OFFSET);
    String hold =
        Stream.of(
                held("the drop", built, DesignValue.YOKE_DROP_HAND),
                held("the leg", built, DesignValue.LEG_HAND),
                held("it", built, DesignValue.HOOK_OFFSET_HAND))
            .flatMap(Optional::stream)
            .collect(Collectors.joining(" and "));
    String exact = hold.isEmpty() ? "" : " Hold " + hold + " for ten closings alike.";
    return "For "
        + ratio.y()
        + " swings along y to "
        + ratio.x()
        + " along x take "
        + figures
        + "."
        + exact;
  }

  private Optional<String> held(String length, BuiltDesign built, DesignValue hand) {
    return figure(built, hand).isPresent()
        ? Optional.of(length + " to " + millimetres(built, hand))
        : Optional.empty();
  }

  private String millimetres(BuiltDesign built, DesignValue value) {
    return SwingWords.digits(figure(built, value).orElseThrow()) + " mm";
  }

  private byte[] csv(CsvDialect dialect) {
    var out = new StringBuilder();
    try {
      var csv =
          new CsvWriter(
              out,
              dialect,
              "keeps",
              "yoke_drop_mm",
              "leg_mm",
              "hook_offset_mm",
              "yoke_drop_hand_mm",
              "leg_hand_mm",
              "hook_offset_hand_mm",
              "closes_after_s",
              "tight_up_to_mm",
              "layout_id");
      for (BuiltDesign built : designs) {
        csv.text(built.design().keeps().word());
        for (DesignValue value : DesignValue.values()) {
          if (value != DesignValue.SENTENCE && value != DesignValue.LAYOUT_ID) {
            OptionalDouble figure = figure(built, value);
            if (figure.isPresent()) {
              csv.number(figure.getAsDouble());
            } else {
              csv.empty();
            }
          }
        }
        csv.text(built.layout().layoutId()).endRow();
      }
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private byte[] json() {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("layoutId", asked.layoutId());
    members.put("ratio", ratio.toString());
    members.put("y", (double) ratio.y());
    members.put("x", (double) ratio.x());
    List<Body> all = new ArrayList<>();
    designs.forEach(design -> all.add(design(design)));
    members.put("designs", all);
    members.put("sentence", sentence(designs.get(0)));
    members.put("notes", notes());
    members.put("engineRevision", (double) ComputationKey.ENGINE_REVISION);
    Map<String, Object> links = new LinkedHashMap<>();
    links.put("self", self);
    links.put("layout", "/v1/layouts/" + asked.layoutId());
    links.put("freeSwing", "/v1/layouts/" + asked.layoutId() + "/free-swing");
    members.put("links", Body.of(links));
    return Body.of(members).toJson().getBytes(StandardCharsets.UTF_8);
  }

  private Body design(BuiltDesign built) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("keeps", built.design().keeps().word());
    members.put("sentence", sentence(built));
    members.put("pendulum", built.layout().canonical().object("pendulum"));
    Map<String, Object> hand = new LinkedHashMap<>();
    put(hand, "yokeDropMm", figure(built, DesignValue.YOKE_DROP_HAND));
    put(hand, "legMm", figure(built, DesignValue.LEG_HAND));
    put(hand, "hookOffsetMm", figure(built, DesignValue.HOOK_OFFSET_HAND));
    members.put("hand", Body.of(hand));
    members.put("wholeMillimetres", whole(built));
    SmallSwings swings = SmallSwings.of(built.layout().layout());
    members.put("periodXS", Numbers.rounded(swings.periodX()));
    members.put("periodYS", Numbers.rounded(swings.periodY()));
    put(members, "closesAfterS", figure(built, DesignValue.CLOSES_AFTER));
    put(members, "tightUpToMm", figure(built, DesignValue.TIGHT_UP_TO));
    BenchLayout bench = (BenchLayout) built.layout().layout();
    members.put("pivotHeightMm", BuiltDesign.millimetres(bench.axisHeight()));
    members.put("layoutId", built.layout().layoutId());
    Map<String, Object> links = new LinkedHashMap<>();
    String base = "/v1/layouts/" + built.layout().layoutId();
    links.put("layout", base);
    links.put("freeSwing", base + "/free-swing");
    links.put("picture", base + "/free-swing?format=svg");
    members.put("links", Body.of(links));
    return Body.of(members);
  }

  /** What a ruler of whole millimetres makes of it. */
  private Body whole(BuiltDesign built) {
    Map<String, Object> members = new LinkedHashMap<>();
    Suspension suspension = built.design().suspension();
    if (suspension instanceof Yoke yoke) {
      members.put("yokeDropMm", Math.max(1, Math.rint(yoke.drop() * MM)));
      members.put("legMm", Math.max(1, Math.rint(yoke.leg() * MM)));
    } else {
      members.put("hookOffsetMm", Math.rint(((HookedBar) suspension).hookOffset() * MM));
    }
    double value = built.whole().ratio();
    members.put("offPercent", Numbers.rounded(100 * (value / ratio.value() - 1)));
    double forms = ratio.formsAfter(built.whole());
    if (Double.isFinite(forms)) {
      members.put("formsAfterS", Numbers.rounded(forms));
    }
    return Body.of(members);
  }

  private List<String> notes() {
    return List.of(
        "hand is the error of each length by itself with which the figure goes through an eighth of"
            + " its forms while it closes "
            + RatioDesign.CLOSINGS
            + " times.",
        "A swing of "
            + SwingWords.digits(Math.toDegrees(RatioDesign.largestSwing(ratio)))
            + " degrees along one axis is slower than a small one by as much as that error: keep"
            + " swings smaller, or expect the figure to run on.");
  }

  private static void put(Map<String, Object> members, String name, OptionalDouble value) {
    value.ifPresent(figure -> members.put(name, figure));
  }
}
