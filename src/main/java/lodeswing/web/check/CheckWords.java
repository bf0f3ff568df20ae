package lodeswing.web.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lodeswing.analysis.check.Change;
import lodeswing.analysis.check.CheckCode;
import lodeswing.analysis.check.Finding;
import lodeswing.analysis.check.Finding.Measure;
import lodeswing.analysis.check.Verdict;
import lodeswing.web.body.Numbers;
import lodeswing.web.layout.LayoutDocument;

/** A check in sentences: every sentence of it, so that another language is one more of these. */
final class CheckWords {

  private static final double MM = 1000;

  private final LayoutDocument layout;

  CheckWords(LayoutDocument layout) {
    this.layout = layout;
  }

  /** The word of a verdict. */
  static String word(Verdict verdict) {
    return verdict.name().toLowerCase(Locale.ROOT);
  }

  /** The whole in one sentence. */
  String sentence(List<Finding> findings) {
    List<String> parts = new ArrayList<>();
    named(findings, Verdict.FAILS, "fails", "fail").ifPresent(parts::add);
    named(findings, Verdict.WATCH, "needs watching", "need watching").ifPresent(parts::add);
    named(findings, Verdict.UNKNOWN, "is not known", "are not known").ifPresent(parts::add);
    return parts.isEmpty()
        ? "All lines are good."
        : String.join("; ", parts) + "; all other lines are good.";
  }

  private static Optional<String> named(
      List<Finding> findings, Verdict verdict, String one, String several) {
    List<String> codes =
        findings.stream()
            .filter(finding -> finding.measure().verdict() == verdict)
            .map(finding -> finding.code().word())
            .toList();
    return codes.isEmpty()
        ? Optional.empty()
        : Optional.of(String.join(", ", codes) + " " + (codes.size() == 1 ? one : several));
  }

  /** Why a line has its verdict, in one sentence. */
  String reason(Finding finding) {
    Measure m = finding.measure();
    CheckCode code = finding.code();
    String figure = m.figure().isPresent() ? plain(code.shown(m.figure().getAsDouble())) : "";
    String limit = m.limit().isPresent() ? plain(code.shown(m.limit().getAsDouble())) : "";
    return switch (m.cause()) {
      case ROOM_AT_REST ->
          "At rest the bob hangs "
              + figure
              + " mm from "
              + thing(m, 0)
              + "; "
              + limit
              + " mm leave room for the gap's own error of "
              + mm(m, 1)
              + " mm.";
      case ROOM_ON_THE_WAY ->
          "On its way the bob comes as near as "
              + figure
              + " mm to "
              + thing(m, 0)
              + at(m, 2)
              + "; "
              + limit
              + " mm leave room for the gap's own error of "
              + mm(m, 1)
              + " mm.";
      case NOWHERE_TO_RELEASE ->
          "The bob cannot be let go anywhere in the region asked about; ask for another radius.";
      case NOTHING_PULLS ->
          "Without magnets on the plate and on the bob there is nothing to judge.";
      case PULL_AND_WEIGHT ->
          "Beside "
              + thing(m, 0)
              + " the magnets pull the bob sideways with "
              + force(m, 1)
              + ", "
              + figure
              + " times what its weight draws it back with ("
              + force(m, 2)
              + "); below 1 the weight wins everywhere, and from "
              + limit
              + " the magnets do.";
      case PULL_AND_SLOWING ->
          "At its fastest"
              + (bench() ? ", " + plain(m.details().get(2)) + " m/s," : "")
              + " the bob is slowed with "
              + force(m, 0)
              + ", "
              + figure
              + " of the magnets' strongest pull of "
              + force(m, 1)
              + "; above "
              + limit
              + " the loss and not the magnets decides where it stops.";
      case PULL_AND_ALL_WEIGHT ->
          "By "
              + thing(m, 0)
              + " the magnets pull what hangs aside with "
              + force(m, 1)
              + ", "
              + figure
              + " of its whole weight of "
              + force(m, 2)
              + "; above "
              + limit
              + " it is light for this plate, and from 1 they take it where they like.";
      case NOTHING_STICKS -> "No magnet of the plate attracts the bob, so that it cannot stick.";
      case POINTS_DO_NOT_TOUCH ->
          "A point dipole has no face, so that the force of a touch is not known; give it a shape.";
      case FREED_BY_FINGERS ->
          "A bob set on "
              + thing(m, 0)
              + ", "
              + mm(m, 1)
              + " mm from face to face, holds with "
              + figure
              + " N; on its way it does not touch, and "
              + limit
              + " N are what two fingers pull.";
      case FREED_BY_SWING ->
          "The bob can touch "
              + thing(m, 0)
              + " on its way and then holds with "
              + figure
              + " N, while its weight frees it up to "
              + force(m, 1)
              + ".";
      case STICKS_WITHOUT_FRICTION ->
          "The bob can touch "
              + thing(m, 0)
              + " on its way and then holds with "
              + figure
              + " N; whether its weight draws it off hangs on the friction there.";
      case LEAST_PULL ->
          (m.details().get(3) > 0 ? "The hook keeps " : "The cord keeps ")
              + figure
              + " of the weight ("
              + force(m, 2)
              + ")"
              + at(m, 0)
              + " at least; at 0 it "
              + (m.details().get(3) > 0 ? "lifts off." : "goes slack.");
      case LOAD_AND_RATING ->
          "Weight ("
              + force(m, 0)
              + "), magnets and swing load the hook with "
              + figure
              + " N at most"
              + at(m, 1)
              + "; "
              + limit
              + " N are four fifths of what its maker allows.";
      case LOAD_WITHOUT_RATING ->
          "Weight ("
              + force(m, 0)
              + "), magnets and swing load the hook with "
              + figure
              + " N at most"
              + at(m, 1)
              + "; what it is made for is not told.";
      case DEPTH_OF_HOOK ->
          "The eye lies "
              + figure
              + " mm below the hook's tip; with an opening of "
              + mm(m, 1)
              + " mm and a swing of "
              + degrees(m, 0)
              + " degrees "
              + limit
              + " mm hold it with 15 degrees to spare.";
      case HOOK_NOT_TOLD -> "Whether the hook closes round the eye hangs on its depth and opening.";
      case SWINGS ->
          "Half of all releases have settled after "
              + plain(m.details().get(0))
              + time()
              + ", "
              + figure
              + " swings of "
              + plain(m.details().get(1))
              + time()
              + "; "
              + (m.figure().orElse(0) > m.limit().orElse(0)
                      && finding.measure().verdict() != Verdict.GOOD
                  ? limit + " are what a class waits for."
                  : limit + " are the fewest worth watching.");
      case NEVER_RESTS ->
          "Most releases have not settled after "
              + plain(m.details().get(0))
              + time()
              + "; "
              + limit
              + " swings are what a class waits for.";
      case WELLS_OF_LABELS ->
          m.figure().orElse(0) == 0
              ? "Each of the " + count(m, 0) + " labels has a rest point over its magnet."
              : figure
                  + " of the "
                  + count(m, 0)
                  + " labels have no rest point over their magnet, the first of them "
                  + thing(m, 1)
                  + ".";
      case LABEL_REPELS ->
          figure
              + " of the "
              + count(m, 0)
              + " labels have no rest point over their magnet; "
              + thing(m, 1)
              + " pushes the bob away.";
      case NO_LABELS -> "No magnet has a label, so that no place stands for anything.";
      case WELLS_AND_LABELS ->
          figure
              + " of the "
              + count(m, 0)
              + " rest points "
              + (m.figure().orElse(0) == 1 ? "has" : "have")
              + " no label, the deepest"
              + at(m, 1)
              + (m.details().get(3) < 0 ? " over no magnet." : " over " + thing(m, 3) + ".");
      case ALL_WELLS_LABELLED ->
          m.details().get(0) == 1
              ? "The one rest point has a label."
              : "All " + count(m, 0) + " rest points have a label.";
      case TRIES ->
          "Two tries of a hand that wanders by "
              + length(m.details().get(1))
              + " end apart with a chance of "
              + figure
              + ", averaged over places of the region; "
              + count(m, 2)
              + " releases met "
              + (m.details().get(0) == 1 ? "one end." : count(m, 0) + " ends.");
      case HELD_BY_FRICTION ->
          "The others push or pull "
              + thing(m, 0)
              + " aside with "
              + force(m, 1)
              + ", "
              + thing(m, 3)
              + " most; that is "
              + figure
              + " of the "
              + force(m, 2)
              + " that friction holds, and at 1 it slides.";
      case HELD_FAST ->
          "The magnets are fixed; the greatest force is "
              + force(m, 1)
              + " on "
              + thing(m, 0)
              + ", which glue, screws or recesses must bear.";
      case HOLD_NOT_TOLD ->
          (code == CheckCode.MAGNETS_LIFT
                  ? "The bob lifts " + thing(m, 0) + " with " + force(m, 1) + " as it passes"
                  : "The others push or pull " + thing(m, 0) + " aside with " + force(m, 1))
              + "; how the magnets are held is not told.";
      case MASS_NOT_TOLD -> "What " + thing(m, 0) + " weighs is not known.";
      case LIFTED_BY_BOB ->
          "The bob lifts "
              + thing(m, 0)
              + " with "
              + force(m, 1)
              + " as it passes, "
              + figure
              + " of the "
              + force(m, 2)
              + " that hold it down; at 1 it leaves the plate.";
      case NOTHING_LIFTS -> "The bob presses every magnet on the plate and lifts none.";
      case NO_NEIGHBOURS -> "One magnet alone has no neighbour that could move it.";
      case LINE_OF_PULL ->
          "From "
              + mm(m, 0)
              + " mm over the plate a swing of "
              + degrees(m, 1)
              + " degrees and a tilt of "
              + degrees(m, 2)
              + " degrees pull towards a point of the bench "
              + figure
              + " mm from the middle; within "
              + limit
              + " mm, four fifths of half the base, even a light stand stays.";
      case STAND_NOT_TOLD ->
          finding.code() == CheckCode.STAND_TIPS
              ? "The swing pulls towards a point of the bench "
                  + figure
                  + " mm from the middle; base and tilt of the stand are not both told."
              : "How far the stand leans is not told; level it, and give 0.";
      case MIDDLE_MOVES ->
          "A tilt of "
              + degrees(m, 0)
              + " degrees carries the middle of the swing "
              + figure
              + " mm off the middle of the plate; "
              + limit
              + " mm go unseen.";
    };
  }

  /** What to do, in one sentence. */
  String change(Change change) {
    String member = change.pointer().substring(1).replace('/', ' ');
    if (change instanceof Change.OfFigure figure) {
      return "Set "
          + member
          + " to "
          + Numbers.shortest(figure.to())
          + (figure.from().isPresent()
              ? " (now " + Numbers.shortest(figure.from().getAsDouble()) + ")."
              : ".");
    }
    Change.OfWord word = (Change.OfWord) change;
    return "Set "
        + member
        + " to "
        + word.to()
        + word.from().map(from -> " (now " + from + ").").orElse(".");
  }

  /** What no single change mends. */
  static String noChange() {
    return "No single change was found that makes this line good.";
  }

  /** Where a line's limit is from. */
  static String source(CheckCode code) {
    return switch (code) {
      case CLEARANCE_AT_REST, CLEARANCE_ON_THE_WAY ->
          "Common practice: 2 mm beside the gap's own error; below 0.5 mm a cord's stretch touches.";
      case PULL_AGAINST_WEIGHT ->
          "Statics: at 1 both pulls are equal; the room is common practice.";
      case PULL_AGAINST_SLOWING -> "Common practice.";
      case WEIGHT_FOR_THE_PLATE ->
          "Statics: at 1 the magnets could hold it at half a right angle; the room is common practice.";
      case STICKING ->
          "Force of two touching magnets over their charged faces (Jackson 1999, section 5.9);"
              + " what fingers pull is common practice.";
      case SUSPENSION_SLACK -> "Statics: at 0 nothing pulls; the fifth left is common practice.";
      case HOOK_LOAD -> "The hook's maker; a fifth of it kept in hand is common practice.";
      case HOOK_DEPTH -> "Geometry of a round hook; 15 degrees to spare are common practice.";
      case SWINGS_BEFORE_REST -> "Common practice of lessons: four swings at least, three minutes.";
      case LABELS_WITHOUT_WELL, WELLS_WITHOUT_LABEL -> "What a label promises.";
      case TWO_TRIES_DIFFER ->
          "Measure: E. H. Simpson, Nature 163 (1949) 688; the limit is common practice.";
      case MAGNETS_SLIDE, MAGNETS_LIFT ->
          "Statics with twofold safety. Dry friction at rest by the Engineering Guide CDA3000,"
              + " formula bank: steel on wood 0.45 to 0.75, on plastic 0.20 to 0.45.";
      case STAND_TIPS ->
          "Statics of a stand without weight; a fifth kept in hand is common practice.";
      case STAND_LEANS -> "Common practice.";
    };
  }

  /** What to know about any check. */
  List<String> notes(CheckRequest request) {
    List<String> notes = new ArrayList<>();
    notes.add(
        "Releases at rest from anywhere within "
            + length(request.radius() / layout.shownPerUnit())
            + " of the middle. Each change was checked again on the changed rig; it mends its own"
            + " line, so check the whole once more. Limits that rest on common practice are no"
            + " standard.");
    if (bench()) {
      notes.add(
          "Steel is taken as thick and soft; a thin sheet holds and pulls less. Magnets that snap"
              + " together pinch and splinter, and small ones are dangerous when swallowed: keep"
              + " them from children and from cardiac devices. Local rules and trained staff come"
              + " first.");
    } else {
      notes.add(
          "A textbook layout has no cord, hook, plate or stand: it has the lines of forces and"
              + " ends alone.");
    }
    return notes;
  }

  private boolean bench() {
    return layout.model().equals("bench");
  }

  private String thing(Measure m, int detail) {
    int magnet = (int) Math.rint(m.details().get(detail));
    return magnet < 0 ? "the plate" : layout.labels().get(magnet).orElse("magnet " + (magnet + 1));
  }

  private String at(Measure m, int detail) {
    String unit = bench() ? " mm" : "";
    double per = layout.shownPerUnit();
    return " at x="
        + place(m.details().get(detail) * per)
        + " y="
        + place(m.details().get(detail + 1) * per)
        + unit;
  }

  private static String place(double value) {
    return Numbers.shortest(Math.rint(value * 10) / 10 + 0.0);
  }

  private String length(double value) {
    return plain(value * layout.shownPerUnit()) + (bench() ? " mm" : "");
  }

  private String force(Measure m, int detail) {
    return plain(m.details().get(detail)) + (bench() ? " N" : "");
  }

  private static String mm(Measure m, int detail) {
    return plain(m.details().get(detail) * MM);
  }

  private static String degrees(Measure m, int detail) {
    return plain(Math.toDegrees(m.details().get(detail)));
  }

  private static String count(Measure m, int detail) {
    return Long.toString(Math.round(m.details().get(detail)));
  }

  private String time() {
    return bench() ? " s" : "";
  }

  private static String plain(double value) {
    return Numbers.shortest(Double.parseDouble(String.format(Locale.ROOT, "%.3g", value)));
  }
}
