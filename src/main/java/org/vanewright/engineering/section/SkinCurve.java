package org.vanewright.engineering.section;

/** A parametric curve along the skin, usually one side from the leading to the trailing edge; its speed is never zero. */
interface SkinCurve {
    /** Increasing parameter values from start to end; smooth between two of them. */
    double[] breaks();

    CurvePoint at(double parameter);

    /** Arc length per unit of parameter. */
    default double speed(double parameter) {
        return at(parameter).speed();
    }
}
