package lodeswing.sheet;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.figure.Outline;
import lodeswing.figure.PlateMagnet;

/**
 * What a worksheet and its key are made of; lengths in metres, times in seconds.
 *
 * @param title the layout's title; empty where it has none
 * @param plate outline of the plate about the point under the bob
 * @param magnets the magnets
 * @param labels what pupils may predict: the labels of the places where the bob can rest
 * @param reach releases lie within this distance of the middle
 * @param hand standard deviation of a hand that lets go
 * @param aims places to let go at, with the chances of each end
 * @param pair a place whose end is sure, or as sure as any, and one whose end is not
 * @param anywhere chances of each end of releases from anywhere within reach
 * @param tries releases behind the chances from anywhere
 * @param swing the swing without magnets
 * @param spots where the field in the plane is weak over the magnets
 * @param cautions short sentences on what can hurt
 */
public record WorksheetFacts(
    String title,
    Optional<Outline> plate,
    List<PlateMagnet> magnets,
    List<String> labels,
    double reach,
    double hand,
    List<Aim> aims,
    List<Aim> pair,
    List<Chance> anywhere,
    int tries,
    Swing swing,
    List<Spot> spots,
    List<String> cautions) {

  /** Copies the lists. */
  public WorksheetFacts {
    magnets = List.copyOf(magnets);
    labels = List.copyOf(labels);
    aims = List.copyOf(aims);
    pair = List.copyOf(pair);
    anywhere = List.copyOf(anywhere);
    spots = List.copyOf(spots);
    cautions = List.copyOf(cautions);
  }

  /**
   * The chance of an end.
   *
   * @param end its name
   * @param share found share
   * @param low lower end of its 95 % interval
   * @param high upper end
   */
  public record Chance(String end, double share, double low, double high) {}

  /**
   * A place to let go at.
   *
   * @param chances the greatest first
   */
  public record Aim(double x, double y, List<Chance> chances) {

    /** Copies the list. */
    public Aim {
      chances = List.copyOf(chances);
    }
  }

  /**
   * The swing without magnets.
   *
   * @param length of a cord; nothing for other suspensions
   * @param halves time in which it loses half; nothing where its loss has another law
   */
  public record Swing(
      double periodX, double periodY, OptionalDouble length, OptionalDouble halves) {}

  /**
   * A weak spot.
   *
   * @param strength of the whole field there [T]
   */
  public record Spot(double x, double y, double strength) {}
}
