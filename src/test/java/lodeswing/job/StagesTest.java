package lodeswing.job;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class StagesTest {

  private final List<Double> told = new ArrayList<>();

  @Test
  void eachStageIsToldAsItsShareOfTheCost() {
    var stages = new Stages(told::add, 30, 0, 10);

    Computation.Progress first = stages.next();
    first.report(0);
    first.report(0.5);
    first.report(1);
    stages.next().report(1);
    Computation.Progress last = stages.next();
    last.report(0.5);
    last.report(1);

    assertEquals(List.of(0.0, 0.375, 0.75, 0.75, 0.875, 1.0), told);
  }

  @Test
  void workThatIsDoneAlreadyTellsNothingUntrue() {
    var stages = new Stages(told::add, 0, 0);

    stages.next().report(1);

    assertEquals(List.of(0.0), told);
  }
}
