package org.vanewright.engineering.gauge;

import java.util.List;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.engineering.section.SurfaceSide;

/**
 * The gauges of one row on one wing.
 *
 * @param row index of the row in the layout
 * @param name of the row
 * @param wing left or right
 * @param side of the surface
 * @param settings as asked for
 * @param gauges as few as the settings allow, root outward; empty where the row has none
 * @param leftOut devices that no gauge places, with the reason
 */
public record RowGauges(
        int row,
        String name,
        Wing wing,
        SurfaceSide side,
        GaugeSettings settings,
        List<Gauge> gauges,
        List<LeftOut> leftOut) {
    public RowGauges {
        gauges = List.copyOf(gauges);
        leftOut = List.copyOf(leftOut);
    }

    /**
     * Devices for the template.
     *
     * @param devices their numbers
     * @param reason why no gauge places them, as a sentence
     */
    public record LeftOut(List<Integer> devices, String reason) {
        public LeftOut {
            devices = List.copyOf(devices);
        }
    }
}
