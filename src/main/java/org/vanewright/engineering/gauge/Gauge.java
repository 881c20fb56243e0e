package org.vanewright.engineering.gauge;

import java.util.List;

/**
 * One gauge: cut for one section, good for a range of stations.
 *
 * @param number from 1 outward
 * @param of how many the row needs on that wing
 * @param panel index of the panel
 * @param cutForMm span station of the unit's middle that it is cut for
 * @param fromMm innermost unit it is for, span station of its middle
 * @param toMm outermost
 * @param devices numbers of the devices it places
 * @param byMeasure those of them at which its inboard face does not bear on a device, since there is none one pitch inboard
 * @param fit worst over the range
 * @param slots one for each device of the unit
 * @param inboardMm from the middle of the unit to the inboard face, which bears on the device stuck on before
 * @param outboardMm from the middle of the unit to the outboard face
 * @param rearMm along the skin from the leading edge to its rear end
 */
public record Gauge(
        int number,
        int of,
        int panel,
        double cutForMm,
        double fromMm,
        double toMm,
        List<Integer> devices,
        List<Integer> byMeasure,
        Fit fit,
        List<Slot> slots,
        double inboardMm,
        double outboardMm,
        double rearMm) {
    public Gauge {
        devices = List.copyOf(devices);
        byMeasure = List.copyOf(byMeasure);
        slots = List.copyOf(slots);
    }
}
