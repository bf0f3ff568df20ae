/**
 * Ties what a request logs to the trace of whoever asked, by W3C Trace Context.
 *
 * <p>It may import servlet types and Spring's filters; nothing of ours.
 */
@NullMarked
package lodeswing.web.correlation;

import org.jspecify.annotations.NullMarked;
