package lodeswing.config;

import io.micrometer.core.instrument.FunctionCounter;
import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.binder.MeterBinder;
import lodeswing.store.ResultTable;

/** Shows what the table of results counts. */
final class StoreMeters implements MeterBinder {

  private final ResultTable table;

  StoreMeters(ResultTable table) {
    this.table = table;
  }

  @Override
  public void bindTo(MeterRegistry meters) {
    FunctionCounter.builder(
            "lodeswing.results.damaged", table, counted -> counted.damaged().count())
        .description("Stored results that were found damaged")
        .register(meters);
    FunctionCounter.builder(
            "lodeswing.results.dropped", table, counted -> counted.budget().dropped())
        .description("Stored results that were dropped to keep the budget")
        .register(meters);
    Gauge.builder("lodeswing.store", table, counted -> counted.budget().total())
        .description("Weight of all stored results")
        .baseUnit("bytes")
        .register(meters);
  }
}
