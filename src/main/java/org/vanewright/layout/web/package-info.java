/** Layouts as pages, files and JSON. */
@NullMarked
package org.vanewright.layout.web;

import org.jspecify.annotations.NullMarked;
