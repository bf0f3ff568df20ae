package lodeswing.analysis.field;

import java.util.ArrayDeque;
import lodeswing.core.field.Frame;

/** The places about one that lie below a level, joined by their sides. */
final class Flood {

  private Flood() {}

  /** How many there are; 0 where the first one does not lie below. */
  static int count(Frame frame, double[] values, int from, double level) {
    return spread(frame, values, from, level)[4];
  }

  /** Least and greatest column and row of them. */
  static int[] box(Frame frame, double[] values, int from, double level) {
    return spread(frame, values, from, level);
  }

  private static int[] spread(Frame frame, double[] values, int from, double level) {
    int columns = frame.columns();
    boolean[] seen = new boolean[values.length];
    ArrayDeque<Integer> waiting = new ArrayDeque<>();
    int[] box = {from % columns, from % columns, from / columns, from / columns, 0};
    if (values[from] < level) {
      waiting.add(from);
      seen[from] = true;
    }
    while (!waiting.isEmpty()) {
      int at = waiting.remove();
      int column = at % columns;
      int row = at / columns;
      box[0] = Math.min(box[0], column);
      box[1] = Math.max(box[1], column);
      box[2] = Math.min(box[2], row);
      box[3] = Math.max(box[3], row);
      box[4]++;
      for (int way = 0; way < 4; way++) {
        int c = column + (way == 0 ? 1 : way == 1 ? -1 : 0);
        int r = row + (way == 2 ? 1 : way == 3 ? -1 : 0);
        int next = r * columns + c;
        boolean within = c >= 0 && r >= 0 && c < columns && r < frame.rows();
        if (within && !seen[next] && values[next] < level) {
          seen[next] = true;
          waiting.add(next);
        }
      }
    }
    return box;
  }
}
