package org.vanewright.study;

import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.engineering.vane.VaneProportions;

/**
 * One row of a layout in proportion to the flow where it stands.
 *
 * @param row its name
 * @param surface that carries it
 * @param side of the surface
 * @param chordFraction x/c of the base centre at its middle device
 * @param heightMm of the vane
 * @param vanes of both wings
 * @param proportions in which recommendations speak
 */
public record RowProportion(
        String row,
        String surface,
        SurfaceSide side,
        double chordFraction,
        double heightMm,
        int vanes,
        VaneProportions proportions) {}
