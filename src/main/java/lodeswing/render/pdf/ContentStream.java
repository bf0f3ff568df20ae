package lodeswing.render.pdf;

import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * The operators of one page, each part marked as what it is (ISO 32000-1:2008, 14.6): everything
 * that is painted belongs to an element of the structure or is an artifact.
 */
final class ContentStream {

  private static final long PARTS = 10_000;

  private final StringBuilder out = new StringBuilder(1 << 14);
  private Optional<StructureElement> wanted = Optional.empty();
  private Optional<StructureElement> open = Optional.empty();
  private boolean marked;
  private final StructureTree.PageMarks marks;

  ContentStream(StructureTree.PageMarks marks) {
    this.marks = marks;
  }

  /** What is painted from now on belongs to an element, or is an artifact where there is none. */
  void belongsTo(Optional<StructureElement> element) {
    wanted = element;
  }

  /** What is painted belongs to. */
  Optional<StructureElement> owner() {
    return wanted;
  }

  /** To be called before anything is painted. */
  ContentStream painting() {
    if (marked && open.equals(wanted)) {
      return this;
    }
    closed();
    if (wanted.isPresent()) {
      StructureElement element = wanted.get();
      out.append('/').append(element.type()).append(" <</MCID ");
      out.append(marks.next(element)).append(">> BDC\n");
    } else {
      out.append("/Artifact BMC\n");
    }
    open = wanted;
    marked = true;
    return this;
  }

  /** Ends the marked part, so that the graphics state can be saved or restored. */
  ContentStream closed() {
    if (marked) {
      out.append("EMC\n");
      marked = false;
    }
    return this;
  }

  /** Operands and an operator, as they are. */
  ContentStream raw(String operators) {
    out.append(operators);
    return this;
  }

  /** An operator after its numbers. */
  ContentStream operator(String name, double... numbers) {
    for (double number : numbers) {
      number(number);
      out.append(' ');
    }
    out.append(name).append('\n');
    return this;
  }

  /** A number with four decimals at most: 35 nanometres of a point. */
  ContentStream number(double value) {
    long parts = Math.round(value * PARTS);
    if (parts < 0) {
      out.append('-');
      parts = -parts;
    }
    out.append(parts / PARTS);
    long rest = parts % PARTS;
    if (rest != 0) {
      String decimals = Long.toString(PARTS + rest).substring(1);
      out.append('.').append(decimals.replaceAll("0+$", ""));
    }
    return this;
  }

  byte[] bytes() {
    closed();
    return out.toString().getBytes(StandardCharsets.US_ASCII);
  }
}
