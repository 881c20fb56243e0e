/**
 * The search over everything published: a projection of the published revisions, kept in the transactions that change them,
 * and the queries on it. Words are cut and stemmed here, so that both databases find the same.
 */
@NullMarked
package org.vanewright.catalogue.search;

import org.jspecify.annotations.NullMarked;
