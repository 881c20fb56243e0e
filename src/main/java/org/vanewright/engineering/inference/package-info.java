/**
 * What repeated measurements say: comparisons of configurations with intervals, how many repeats a question needs, in
 * which order to fly them, and words that follow from the numbers.
 *
 * <p>Everything assumes values that scatter independently and roughly normally about their means. Rank tests, unequal
 * numbers of values in a block and Dunnett's test, whose distribution no library here offers, are not in it; several
 * configurations against one baseline are corrected by Holm's rule.
 */
@NullMarked
package org.vanewright.engineering.inference;

import org.jspecify.annotations.NullMarked;
