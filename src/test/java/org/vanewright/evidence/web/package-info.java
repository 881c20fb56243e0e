/** Tests of the pages, tables and JSON of published comparisons. */
@NullMarked
package org.vanewright.evidence.web;

import org.jspecify.annotations.NullMarked;
