/**
 * What several comparisons of the same thing come to together: random-effects summaries and what they hide.
 *
 * <p>Effects are taken as independent and normal about their own true values with standard errors that are known; those of a
 * few test flights are themselves uncertain, which makes heterogeneity look a little larger than it is. Corrections for what
 * was never published are not in it.
 */
@NullMarked
package org.vanewright.engineering.inference.meta;

import org.jspecify.annotations.NullMarked;
