package org.vanewright.engineering.wing;

import org.vanewright.engineering.section.SurfaceSide;

/**
 * A span interval where no device may sit.
 *
 * @param fromMm span station of its inner end
 * @param toMm span station of its outer end
 * @param upper whether it holds on the upper side
 * @param lower whether it holds on the lower side
 * @param reason such as "stall-warning vane", shown wherever a device had to give way
 */
public record KeepOut(double fromMm, double toMm, boolean upper, boolean lower, String reason) {
    public boolean on(SurfaceSide side) {
        return side == SurfaceSide.UPPER ? upper : lower;
    }
}
