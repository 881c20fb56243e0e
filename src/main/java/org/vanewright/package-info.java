/**
 * Vanewright: a service for flying clubs that print, place and test small vanes.
 *
 * <p>Data flows one way: web → feature → engineering.
 */
@NullMarked
package org.vanewright;

import org.jspecify.annotations.NullMarked;
