package lodeswing.web.check;

import java.util.ArrayList;
import java.util.List;

/** The name by which a query changes a member: its path in dots, list elements counted from 1. */
final class ParameterName {

  private ParameterName() {}

  /**
   * The name.
   *
   * @param pointer JSON Pointer into the canonical layout
   */
  static String of(String pointer) {
    List<String> steps = new ArrayList<>();
    for (String step : pointer.substring(1).split("/", -1)) {
      if (step.chars().allMatch(Character::isDigit)) {
        steps.add(Integer.toString(Integer.parseInt(step) + 1));
      } else if (step.equals("magnets") || step.equals("parts")) {
        steps.add(step.substring(0, step.length() - 1));
      } else {
        steps.add(step);
      }
    }
    return String.join(".", steps);
  }
}
