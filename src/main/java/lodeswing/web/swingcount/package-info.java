/**
 * Resource {@code /v1/layouts/{layoutId}/swing-count}: period, length and loss from counted swings
 * and a ruler.
 *
 * <p>Reads the counts from the query, has {@code analysis.swingcount} tell what they say, and
 * answers with intervals, the layout's own figures and the layout that would swing as counted.
 */
@NullMarked
package lodeswing.web.swingcount;

import org.jspecify.annotations.NullMarked;
