/**
 * One neutral drawing model, written as PDF, SVG and DXF. Millimetres at true scale, x right, y up; angles in degrees
 * anticlockwise.
 */
@NullMarked
package org.vanewright.engineering.drawing;

import org.jspecify.annotations.NullMarked;
