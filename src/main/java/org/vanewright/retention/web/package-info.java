/** The page of retention, and the same as JSON and as a table. */
@NullMarked
package org.vanewright.retention.web;

import org.jspecify.annotations.NullMarked;
