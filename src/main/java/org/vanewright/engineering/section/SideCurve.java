package org.vanewright.engineering.section;

/** One side of a section as a parametric curve from the leading to the trailing edge; its speed is never zero. */
interface SideCurve {
    /** Increasing parameter values, first at the leading and last at the trailing edge; smooth between two of them. */
    double[] breaks();

    CurvePoint at(double parameter);

    /** Arc length per unit of parameter. */
    default double speed(double parameter) {
        return at(parameter).speed();
    }
}
