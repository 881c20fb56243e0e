/**
 * How long things last when not all of them have failed yet: product-limit curves of right-censored lifetimes with
 * their intervals, life tables, the log-rank test, Turnbull's estimator for losses known only to lie between two
 * inspections, binomial limits, and intervals for observations that share a fate.
 *
 * <p>Censoring must say nothing about the lifetime itself. Truncation, covariates and competing causes are not in it.
 */
@NullMarked
package org.vanewright.engineering.inference.survival;

import org.jspecify.annotations.NullMarked;
