package org.vanewright.engineering.bond;

import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Strength over demand, by the way a bond can give way. Below 1 it is expected to; above 1 nothing is approved. Absent
 * where the strength is not stated.
 */
public record BondMargins(
        @Nullable Double shear,
        @Nullable Double tension,
        @Nullable Double cleavage) {
    /** The margin of one mode. */
    public @Nullable Double of(BondMode mode) {
        return switch (mode) {
            case SHEAR -> shear;
            case TENSION -> tension;
            case CLEAVAGE -> cleavage;
        };
    }

    /** The mode with the least margin; empty where no strength is stated. */
    public Optional<BondMode> weakest() {
        BondMode found = null;
        for (BondMode mode : BondMode.values()) {
            Double margin = of(mode);
            Double least = found == null ? null : of(found);
            if (margin != null && (least == null || margin < least)) {
                found = mode;
            }
        }
        return Optional.ofNullable(found);
    }

    /** The least margin; empty where no strength is stated. */
    public Optional<Double> least() {
        return Stream.of(BondMode.values())
                .map(this::of)
                .flatMap(Stream::ofNullable)
                .min(Double::compare);
    }
}
