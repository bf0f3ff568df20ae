package lodeswing.web.correlation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Held against "Trace Context", W3C Recommendation of 23 November 2021, section by section. */
class TraceContextTest {

  private static final String TRACE = "4bf92f3577b34da6a3ce929d0e0e4736";
  private static final String PARENT = "00f067aa0ba902b7";

  /** The example of section 3.2.3. */
  @Test
  void exampleOfTheRecommendationIsRead() {
    assertEquals(Optional.of(TRACE), TraceContext.traceId("00-" + TRACE + "-" + PARENT + "-01"));
  }

  /** Section 3.2.2.5: other flags are to be ignored. */
  @ParameterizedTest
  @ValueSource(strings = {"00", "01", "02", "ff"})
  void anyFlagsAreRead(String flags) {
    assertEquals(
        Optional.of(TRACE), TraceContext.traceId("00-" + TRACE + "-" + PARENT + "-" + flags));
  }

  /** Section 4.3: of a higher version what is known is read, whatever follows after a hyphen. */
  @ParameterizedTest
  @ValueSource(strings = {"", "-", "-what-may-come", "-\u00e4"})
  void higherVersionsAreRead(String more) {
    assertEquals(
        Optional.of(TRACE), TraceContext.traceId("cc-" + TRACE + "-" + PARENT + "-01" + more));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "00",
        // section 3.2.2.1: version ff is invalid
        "ff-" + TRACE + "-" + PARENT + "-01",
        // section 3.2.2.2: version 00 has nothing more
        "00-" + TRACE + "-" + PARENT + "-01-",
        "00-" + TRACE + "-" + PARENT + "-01-more",
        "cc-" + TRACE + "-" + PARENT + "-01.more",
        // section 3.2.2.3: all zero is invalid
        "00-00000000000000000000000000000000-" + PARENT + "-01",
        // section 3.2.2.4: all zero is invalid
        "00-" + TRACE + "-0000000000000000-01",
        // HEXDIGLC: lower case alone
        "00-4BF92F3577B34DA6A3CE929D0E0E4736-" + PARENT + "-01",
        "00-" + TRACE + "-" + PARENT + "-0A",
        "00-" + TRACE + "-" + PARENT + "-1",
        "0-" + TRACE + "-" + PARENT + "-01",
        "00-" + TRACE + PARENT + "-01",
        "00_" + TRACE + "_" + PARENT + "_01",
        "00-" + TRACE + "-" + PARENT,
        " 00-" + TRACE + "-" + PARENT + "-01",
        "00-" + TRACE + "-" + PARENT + "-01\n",
        "00-4bf92f3577b34da6a3ce929d0e0e473-" + PARENT + "-01",
        "00-4bf92f3577b34da6a3ce929d0e0e47361-" + PARENT + "-01"
      })
  void malformedOnesAreNotRead(String header) {
    assertEquals(Optional.empty(), TraceContext.traceId(header));
  }

  /** Whatever is read is what was written, and nothing else ever gets into the log. */
  @Property
  void whatIsReadIsWhatWasWritten(
      @ForAll @StringLength(max = 60) @CharRange(from = '0', to = 'f') String header) {
    TraceContext.traceId(header)
        .ifPresent(trace -> assertTrue(header.startsWith(trace, 3), header));
  }

  @Test
  void spanIsOursAndTraceTheCallers() {
    TraceContext context =
        TraceContext.of(List.of("00-" + TRACE + "-" + PARENT + "-01"), new SplittableRandom(1));
    assertEquals(TRACE, context.traceId());
    assertNotEquals(PARENT, context.spanId());
    assertTrue(context.spanId().matches("[0-9a-f]{16}"), context.spanId());
  }

  @Test
  void missingDoubledAndMalformedOnesBeginANewTrace() {
    String good = "00-" + TRACE + "-" + PARENT + "-01";
    for (List<String> headers : List.of(List.<String>of(), List.of(good, good), List.of("no"))) {
      TraceContext context = TraceContext.of(headers, new SplittableRandom(2));
      assertNotEquals(TRACE, context.traceId());
      assertEquals(Optional.of(context.traceId()), TraceContext.traceId(header(context)));
    }
  }

  /** An id of zeros alone would be invalid; nought is drawn again. */
  @Test
  void drawnIdsAreNeverAllZero() {
    Iterator<Long> draws = List.of(0L, 1L, 0L, 0L, 2L, 0L, 3L).iterator();
    RandomGenerator random = draws::next;
    assertEquals(
        new TraceContext("00000000000000010000000000000002", "0000000000000003"),
        TraceContext.of(List.of(), random));
  }

  private static String header(TraceContext context) {
    return "00-" + context.traceId() + "-" + context.spanId() + "-00";
  }
}
