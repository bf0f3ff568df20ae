package lodeswing.web.body;

import java.util.ArrayList;
import java.util.List;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;

/** Collects everything that is wrong with one request, up to a stated number. */
public final class FaultList {

  /** More faults than this are counted, not listed. */
  public static final int LISTED = 100;

  private final List<Fault> faults = new ArrayList<>();
  private int found;

  /**
   * Adds a fault.
   *
   * @param pointer JSON Pointer of the member
   * @param detail what is wrong and what would be accepted
   */
  public void add(String pointer, String detail) {
    found++;
    if (faults.size() < LISTED) {
      faults.add(new Fault(pointer, detail));
    }
  }

  /** Whether nothing is wrong so far. */
  public boolean isEmpty() {
    return found == 0;
  }

  /** How many faults were found, listed or not. */
  public int found() {
    return found;
  }

  /** The faults listed. */
  public List<Fault> listed() {
    return List.copyOf(faults);
  }

  /**
   * Ends the request if anything is wrong.
   *
   * @param code the kind of problem
   * @param subject what has the faults, as the beginning of a sentence
   * @throws ProblemException with every fault
   */
  public void refuseIfAny(ProblemCode code, String subject) {
    if (found == 0) {
      return;
    }
    String count = found == 1 ? "one fault" : found + " faults";
    String rest = found > LISTED ? "; the first " + LISTED + " are listed" : "";
    throw new ProblemException(code, subject + " has " + count + rest + ".", faults);
  }
}
