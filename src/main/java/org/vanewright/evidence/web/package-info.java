/** Pages, tables and JSON of what published comparisons come to together. */
@NullMarked
package org.vanewright.evidence.web;

import org.jspecify.annotations.NullMarked;
