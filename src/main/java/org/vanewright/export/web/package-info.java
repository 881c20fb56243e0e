/** The export of the public record as a page and for programs. */
@NullMarked
package org.vanewright.export.web;

import org.jspecify.annotations.NullMarked;
