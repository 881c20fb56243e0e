package org.vanewright.engineering.template;

import org.vanewright.engineering.drawing.Drawing;
import org.vanewright.engineering.placement.Wing;

/**
 * One sheet of the template: the part of one row that lies on one panel of one wing.
 *
 * @param name short, unique within the layout, such as {@code L1} or {@code L1-2}
 * @param wing left or right
 * @param row index of the row
 * @param panel index of the panel
 * @param drawing at true scale; leading edge up, seen from outside the skin
 * @param maximumStrain of the flat pattern; 0 where the skin unrolls exactly
 */
public record TemplatePiece(String name, Wing wing, int row, int panel, Drawing drawing, double maximumStrain) {}
