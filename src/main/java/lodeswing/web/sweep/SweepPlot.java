package lodeswing.web.sweep;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lodeswing.figure.Drawing;
import lodeswing.figure.Mark;
import lodeswing.figure.SweepLinesFigure;
import lodeswing.figure.SweepMapFigure;
import lodeswing.figure.SweepPicture;
import lodeswing.figure.Tint;
import lodeswing.render.Palette;
import lodeswing.web.basin.EndNames;

/** The picture of a sweep: lines over one quantity, a map over two. */
final class SweepPlot {

  private final SweepAnswers answers;
  private final SweepTable table;
  private final SweepRequest request;

  SweepPlot(SweepAnswers answers) {
    this.answers = answers;
    this.table = answers.table();
    this.request = table.request();
  }

  /**
   * Draws it.
   *
   * @param column the column that is meant; all where empty, of a map the first
   */
  Drawing drawing(Optional<String> column) {
    List<SweepPicture.Axis> axes = request.vary().stream().map(this::axis).toList();
    boolean map = axes.size() == 2;
    List<Integer> shown =
        column.isPresent() || map ? List.of(measure(answers.column(column))) : table.shown();
    List<SweepPicture.Panel> panels = shown.stream().map(this::panel).toList();
    String kind = map ? "A map of cells." : "Panels over one quantity.";
    var picture =
        new SweepPicture(
            answers.words().title(shown),
            axes,
            panels,
            captions(shown),
            answers.words().alternative(kind));
    return map ? SweepMapFigure.draw(picture) : SweepLinesFigure.draw(picture);
  }

  /** A column that a picture can show; that of the measure where a quantity is asked for. */
  private int measure(int column) {
    return table.columns().get(column).shown() ? column : table.shown().get(0);
  }

  private List<String> captions(List<Integer> shown) {
    List<String> captions = new ArrayList<>();
    shown.forEach(column -> captions.add(answers.words().said(column)));
    if (table.problems() > 0) {
      captions.add(answers.words().problems());
    }
    captions.add(request.url());
    return captions;
  }

  private SweepPicture.Axis axis(SweptQuantity quantity) {
    String unit = quantity.unit(request.bench());
    List<Double> places = new ArrayList<>();
    if (quantity.numbers()) {
      quantity.values().forEach(value -> places.add((Double) value));
    }
    return new SweepPicture.Axis(
        quantity.words() + (unit.isEmpty() ? "" : " in " + unit),
        quantity.values().stream().map(SweptQuantity::written).toList(),
        places);
  }

  private SweepPicture.Panel panel(int column) {
    SweepColumn about = table.columns().get(column);
    String words = about.words() + (about.unit().isEmpty() ? "" : " in " + about.unit());
    if (about.part() == SweepColumn.Part.WORD) {
      return words(words, column);
    }
    boolean interval =
        column + 1 < table.columns().size()
            && table.columns().get(column + 1).part() == SweepColumn.Part.LOW;
    return new SweepPicture.Panel.Numbers(
        words,
        numbers(column),
        interval ? numbers(column + 1) : List.of(),
        interval ? numbers(column + 2) : List.of());
  }

  private List<Double> numbers(int column) {
    List<Double> numbers = new ArrayList<>();
    for (int row = 0; row < table.rows().size(); row++) {
      numbers.add(table.number(row, column));
    }
    return numbers;
  }

  private SweepPicture.Panel words(String words, int column) {
    Map<String, SweepPicture.Kind> kinds = new LinkedHashMap<>();
    switch (table.columns().get(column).name()) {
      case "sure" -> levels(kinds, "yes", "no");
      case "contact" -> levels(kinds, "none", "touch", "stick");
      default -> labels(kinds);
    }
    List<String> order = new ArrayList<>(kinds.keySet());
    List<Integer> which = new ArrayList<>();
    for (int row = 0; row < table.rows().size(); row++) {
      Optional<String> word = table.word(row, column);
      word.ifPresent(
          name -> {
            if (!kinds.containsKey(name)) {
              kinds.put(name, kind(name, kinds.size()));
              order.add(name);
            }
          });
      which.add(word.map(order::indexOf).orElse(-1));
    }
    return onlyThose(words, order, kinds, which);
  }

  /** Without the kinds that no point has. */
  private static SweepPicture.Panel onlyThose(
      String words, List<String> order, Map<String, SweepPicture.Kind> kinds, List<Integer> which) {
    List<Integer> kept = which.stream().filter(k -> k >= 0).distinct().sorted().toList();
    List<SweepPicture.Kind> shown = new ArrayList<>();
    for (int k : kept) {
      Optional.ofNullable(kinds.get(order.get(k))).ifPresent(shown::add);
    }
    return new SweepPicture.Panel.Words(
        words, shown, which.stream().map(k -> k < 0 ? -1 : kept.indexOf(k)).toList());
  }

  private static void levels(Map<String, SweepPicture.Kind> kinds, String... words) {
    Mark[] marks = {Mark.DISC, Mark.CROSS, Mark.SQUARE};
    for (int k = 0; k < words.length; k++) {
      double place = 0.2 + 0.6 * k / (words.length - 1);
      kinds.put(
          words[k],
          new SweepPicture.Kind(
              words[k],
              new Tint.Level(0, place),
              place < 0.5 ? Tint.Role.INK : Tint.Role.PAPER,
              marks[k]));
    }
  }

  /** Labels in the order of the magnets have the colours that they have in maps, mostly. */
  private void labels(Map<String, SweepPicture.Kind> kinds) {
    for (Optional<String> label : request.layout().labels()) {
      label.ifPresent(name -> kinds.computeIfAbsent(name, n -> kind(n, kinds.size())));
    }
  }

  private static SweepPicture.Kind kind(String name, int index) {
    return EndNames.specialNamed(name)
        .map(
            special ->
                new SweepPicture.Kind(
                    name,
                    new Tint.Neutral(special.place(), false),
                    new Tint.Neutral(special.place(), true),
                    Palette.mark(index)))
        .orElseGet(
            () ->
                new SweepPicture.Kind(
                    name,
                    new Tint.Shade(index, 0.5, false),
                    new Tint.Shade(index, 0.5, true),
                    Palette.mark(index)));
  }
}
