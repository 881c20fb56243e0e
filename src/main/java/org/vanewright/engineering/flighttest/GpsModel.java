package org.vanewright.engineering.flighttest;

import org.jspecify.annotations.Nullable;

/** How legs depend on airspeed and wind; unknowns are airspeed, wind towards the east and towards the north. */
interface GpsModel {
    /** By how much each leg misses. */
    double[] residuals(double[] unknowns);

    /** Derivatives of the residuals, a row for each leg. */
    double[][] slopes(double[] unknowns);

    /** Rows of the linear problem, each of like size in its columns. */
    double[][] linearRows();

    double[] linearRight();

    /** The unknowns from what solves the linear problem; null where there are none. */
    double @Nullable [] fromLinear(double[] solved);
}
