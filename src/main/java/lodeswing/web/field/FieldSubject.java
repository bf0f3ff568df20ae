package lodeswing.web.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lodeswing.web.body.Numbers;

/** What is shown of the field, with every default filled in. */
sealed interface FieldSubject {

  /** Points of the grids on which weak spots are looked for, about. */
  double SPOT_POINTS = 2e5;

  /** Points at which the zones of some four spots to a magnet are looked at, about. */
  double SPOT_POINTS_PER_MAGNET = 4e4;

  /** Points that weak spots take, about. */
  static double spotPoints(int magnets) {
    return SPOT_POINTS + SPOT_POINTS_PER_MAGNET * magnets;
  }

  /** Its word: the last part of its address. */
  String word();

  /** What it was asked, in words without blanks. */
  List<String> words();

  /** The same as the end of a query. */
  String query();

  /**
   * How often the field of one source is asked for, about.
   *
   * @param halfWidth half of the window's side [mm]
   * @param magnets of the plate
   */
  double points(double halfWidth, int magnets);

  /** What words after the view tell. */
  static FieldSubject of(String word, List<String> words) {
    return switch (word) {
      case "map" ->
          new Strength(
              Integer.parseInt(words.get(0)), words.get(1).equals("plane"), flag(words.get(2)));
      case "lines" ->
          new Lines(
              Double.parseDouble(words.get(0)),
              words.get(1).equals("plan")
                  ? Optional.empty()
                  : Optional.of(Double.valueOf(words.get(1))),
              flag(words.get(2)));
      case "filings" ->
          new Strewn(
              Integer.parseInt(words.get(0)), Integer.parseInt(words.get(1)), flag(words.get(2)));
      default -> new Spots();
    };
  }

  private static boolean flag(String word) {
    return word.equals("true");
  }

  /** Whether weak spots are found and marked. */
  boolean spots();

  /**
   * Its strength.
   *
   * @param side points along a side
   * @param inPlane whether of its part in the plane alone
   */
  record Strength(int side, boolean inPlane, boolean spots) implements FieldSubject {

    @Override
    public String word() {
      return "map";
    }

    @Override
    public List<String> words() {
      return List.of(Integer.toString(side), inPlane ? "plane" : "whole", Boolean.toString(spots));
    }

    @Override
    public String query() {
      return "&side=" + side + "&part=" + words().get(1) + "&spots=" + spots;
    }

    @Override
    public double points(double halfWidth, int magnets) {
      return (double) side * side + (spots ? FieldSubject.spotPoints(magnets) : 0);
    }
  }

  /**
   * Lines along it.
   *
   * @param apartMm their distance
   * @param turnDeg direction of an upright cut; nothing for the plan
   */
  record Lines(double apartMm, Optional<Double> turnDeg, boolean spots) implements FieldSubject {

    /** A step on one point by itself costs as much as so many on lanes. */
    private static final double ALONE = 15;

    @Override
    public String word() {
      return "lines";
    }

    @Override
    public List<String> words() {
      return List.of(
          Numbers.shortest(apartMm),
          turnDeg.map(Numbers::shortest).orElse("plan"),
          Boolean.toString(spots));
    }

    @Override
    public String query() {
      return "&apartMm="
          + Numbers.shortest(apartMm)
          + turnDeg.map(turn -> "&cut=upright&turnDeg=" + Numbers.shortest(turn)).orElse("")
          + "&spots="
          + spots;
    }

    @Override
    public double points(double halfWidth, int magnets) {
      double along = 4 * halfWidth * halfWidth / (apartMm * apartMm);
      return 24 * ALONE * along + (spots ? FieldSubject.spotPoints(magnets) : 0);
    }
  }

  /**
   * Filings.
   *
   * @param count how many are strewn
   * @param seed of their places
   */
  record Strewn(int count, int seed, boolean spots) implements FieldSubject {

    @Override
    public String word() {
      return "filings";
    }

    @Override
    public List<String> words() {
      return List.of(Integer.toString(count), Integer.toString(seed), Boolean.toString(spots));
    }

    @Override
    public String query() {
      return "&count=" + count + "&seed=" + seed + "&spots=" + spots;
    }

    @Override
    public double points(double halfWidth, int magnets) {
      return 15.0 * count + (spots ? FieldSubject.spotPoints(magnets) : 0);
    }
  }

  /** Where it is weak. */
  record Spots() implements FieldSubject {

    @Override
    public String word() {
      return "weak-spots";
    }

    @Override
    public List<String> words() {
      return new ArrayList<>();
    }

    @Override
    public String query() {
      return "";
    }

    @Override
    public double points(double halfWidth, int magnets) {
      return SPOT_POINTS + FieldSubject.spotPoints(magnets);
    }

    @Override
    public boolean spots() {
      return true;
    }
  }
}
