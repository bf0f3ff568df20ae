package lodeswing.web.layout;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import lodeswing.web.problem.Fault;

/**
 * Faults under the names of the parameters that were written, since whoever asks by an address has
 * sent no body.
 */
final class WrittenNames {

  /** More parameters than this are not tried out one by one. */
  private static final int MOST_TRIED = 40;

  private final Map<String, String> names;
  private final Map<String, List<Fault>> tried = new HashMap<>();

  /**
   * Names by what they change.
   *
   * @param names the name that has the last word on each changed pointer
   */
  WrittenNames(Map<String, String> names) {
    this.names = names;
  }

  /** Whether a pointer names a place or something in it. */
  static boolean within(String pointer, String place) {
    return pointer.equals(place) || pointer.startsWith(place + "/");
  }

  /** The parameter that changed the place of a fault or something in it; else the first. */
  String of(Fault fault) {
    return "?" + direct(fault).orElseGet(this::first);
  }

  /**
   * The parameter that changed the place of a fault; else one without which the fault is not there.
   *
   * @param faultsWithout the faults of the layout without the change of one name
   */
  String blamed(Fault fault, Function<String, List<Fault>> faultsWithout) {
    return "?"
        + direct(fault)
            .or(() -> without(faultsWithout, same -> same.pointer().equals(fault.pointer())))
            .or(() -> without(faultsWithout, fault::equals))
            .orElseGet(this::first);
  }

  /** The name itself, or of several in the place a numbered one before that of every magnet. */
  private Optional<String> direct(Fault fault) {
    String exact = names.get(fault.pointer());
    return exact != null
        ? Optional.of(exact)
        : names.entrySet().stream()
            .filter(entry -> within(entry.getKey(), fault.pointer()))
            .map(Map.Entry::getValue)
            .min(Comparator.comparing(name -> name.startsWith(OverrideTarget.EVERY)));
  }

  private Optional<String> without(
      Function<String, List<Fault>> faultsWithout, Predicate<Fault> same) {
    return names.values().stream()
        .distinct()
        .limit(MOST_TRIED)
        .filter(name -> tried.computeIfAbsent(name, faultsWithout).stream().noneMatch(same))
        .findFirst();
  }

  private String first() {
    return names.values().iterator().next();
  }
}
