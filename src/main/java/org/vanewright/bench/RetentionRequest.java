package org.vanewright.bench;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Groups of devices with how long each stayed on.
 *
 * @param groups one or more
 * @param confidence of the limits; absent for 0.95
 */
public record RetentionRequest(
        @Nullable List<@Nullable Group> groups, @Nullable Double confidence) {
    /**
     * Devices that have something in common.
     *
     * @param name what that is
     * @param observations one or more
     */
    public record Group(@Nullable String name, @Nullable List<@Nullable Observation> observations) {}

    /**
     * One device.
     *
     * @param hours until it was lost, or was last seen in place
     * @param lost whether it was lost then
     */
    public record Observation(
            @Nullable Double hours, @Nullable Boolean lost) {}
}
