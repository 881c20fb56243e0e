/**
 * The computation core: pure functions of their arguments in plain Java. Knows no Spring, no SQL, no web and no
 * feature. SI or millimetres inside, units stand in names; angles in degrees where a name ends in {@code Deg}.
 */
@NullMarked
package org.vanewright.engineering;

import org.jspecify.annotations.NullMarked;
