package org.vanewright.airframe;

import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.section.SectionSpec;

/**
 * A straight-tapered piece of a surface. Stations count from the aircraft's centre line outboard (from the root up on a
 * fin), leading-edge offsets rearward from one datum of the surface.
 *
 * @param innerStationMm where it begins
 * @param outerStationMm where it ends
 * @param innerChordMm chord at the inner end
 * @param outerChordMm chord at the outer end
 * @param innerLeadingEdgeMm leading-edge offset at the inner end; absent means 0
 * @param outerLeadingEdgeMm leading-edge offset at the outer end; absent means as at the inner end
 * @param innerSection section at the inner end
 * @param outerSection section at the outer end; absent means as at the inner end
 * @param twistDeg of the outer section against the inner one, nose up positive; absent means 0
 */
public record PanelDocument(
        @Nullable Double innerStationMm,
        @Nullable Double outerStationMm,
        @Nullable Double innerChordMm,
        @Nullable Double outerChordMm,
        @Nullable Double innerLeadingEdgeMm,
        @Nullable Double outerLeadingEdgeMm,
        @Nullable SectionSpec innerSection,
        @Nullable SectionSpec outerSection,
        @Nullable Double twistDeg) {}
