/**
 * Worksheets: activities for a class at one rig, with a key that is computed for it.
 *
 * <p>Figures are computed and stored once for every language and paper; the sheet is set at each
 * request. May import the web's shared packages, the sheet, analyses and the core.
 */
@org.jspecify.annotations.NullMarked
package lodeswing.web.worksheet;
