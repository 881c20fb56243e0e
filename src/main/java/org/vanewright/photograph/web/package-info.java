/** Serves photographs. */
@NullMarked
package org.vanewright.photograph.web;

import org.jspecify.annotations.NullMarked;
