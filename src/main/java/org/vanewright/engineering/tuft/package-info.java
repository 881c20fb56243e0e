/**
 * Tufts on a surface: a grid with the area that each tuft stands for, what was seen of them, and what follows from it.
 * A grid says nothing finer than one of its cells, and a survey is one look, so that no interval follows from it.
 */
@NullMarked
package org.vanewright.engineering.tuft;

import org.jspecify.annotations.NullMarked;
