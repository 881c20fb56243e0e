package org.vanewright.platform.plot;

import org.jspecify.annotations.Nullable;

/**
 * An axis of a plot.
 *
 * @param label quantity and unit
 * @param low where it begins; null lets the values decide
 * @param high where it ends; null lets the values decide
 * @param reversed whether it counts downward or leftward
 * @param whole whether only whole numbers mean anything on it
 */
public record PlotAxis(
        String label, @Nullable Double low, @Nullable Double high, boolean reversed, boolean whole) {
    /** One that shows all there is. */
    public static PlotAxis of(String label) {
        return new PlotAxis(label, null, null, false, false);
    }

    public static PlotAxis of(String label, double low, double high) {
        return new PlotAxis(label, low, high, false, false);
    }

    /** One that shows all there is and counts in whole numbers. */
    public static PlotAxis counting(String label) {
        return new PlotAxis(label, null, null, false, true);
    }

    public static PlotAxis counting(String label, double low, double high) {
        return new PlotAxis(label, low, high, false, true);
    }
}
