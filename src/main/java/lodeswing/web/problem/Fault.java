package lodeswing.web.problem;

/**
 * One thing that is wrong with a request.
 *
 * @param pointer JSON Pointer into the body (RFC 6901), or {@code ?name} for a query parameter
 * @param detail what is wrong and what would be accepted
 */
public record Fault(String pointer, String detail) {}
