package lodeswing.web.body;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class NumbersTest {

  /** Bit patterns and texts of RFC 8785, appendix B. */
  @Test
  void numbersAreWrittenAsRfc8785Shows() {
    expect(0x0000000000000000L, "0");
    expect(0x8000000000000000L, "0");
    expect(0x0000000000000001L, "5e-324");
    expect(0x8000000000000001L, "-5e-324");
    expect(0x7fefffffffffffffL, "1.7976931348623157e+308");
    expect(0x4340000000000000L, "9007199254740992");
    expect(0x4430000000000000L, "295147905179352830000");
    expect(0x44b52d02c7e14af5L, "9.999999999999997e+22");
    expect(0x44b52d02c7e14af6L, "1e+23");
    expect(0x44b52d02c7e14af7L, "1.0000000000000001e+23");
    expect(0x444b1ae4d6e2ef4eL, "999999999999999700000");
    expect(0x444b1ae4d6e2ef4fL, "999999999999999900000");
    expect(0x444b1ae4d6e2ef50L, "1e+21");
    expect(0x3eb0c6f7a0b5ed8cL, "9.999999999999997e-7");
    expect(0x3eb0c6f7a0b5ed8dL, "0.000001");
    expect(0x41b3de4355555553L, "333333333.3333332");
    expect(0x41b3de4355555557L, "333333333.33333343");
    expect(0xbecbf647612f3696L, "-0.0000033333333333333333");
    expect(0x43143ff3c1cb0959L, "1424953923781206.2");
  }

  private static void expect(long bits, String text) {
    assertEquals(text, Numbers.shortest(Double.longBitsToDouble(bits)));
  }

  @Property(tries = 500)
  boolean everyNumberReadsBackAsItself(@ForAll double value) {
    return Double.parseDouble(Numbers.shortest(value)) == value;
  }
}
