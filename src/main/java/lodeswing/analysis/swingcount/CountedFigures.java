package lodeswing.analysis.swingcount;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** What counted swings tell, figure by figure. */
public final class CountedFigures {

  private final Map<Figure, Measured> figures;

  CountedFigures(Map<Figure, Measured> figures) {
    this.figures = new EnumMap<>(Figure.class);
    this.figures.putAll(figures);
  }

  /** A figure; empty where the readings do not tell it. */
  public Optional<Measured> find(Figure figure) {
    return Optional.ofNullable(figures.get(figure));
  }

  /**
   * A figure that the readings tell.
   *
   * @throws IllegalStateException where they do not
   */
  public Measured get(Figure figure) {
    return find(figure).orElseThrow(() -> new IllegalStateException(figure + " is not told"));
  }
}
