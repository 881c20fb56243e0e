package org.vanewright.engineering.unroll;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.section.SectionSpec;
import org.vanewright.engineering.section.SurfaceSide;

/**
 * Places on the skin of one panel, to be found on its flat sheet. Every field is needed; they are nullable because
 * callers leave things out.
 *
 * @param panel the piece of wing
 * @param side which skin
 * @param points 1 to {@value UnrollCalculation#MOST_POINTS}
 */
public record UnrollRequest(
        @Nullable Panel panel,
        @Nullable SurfaceSide side,
        @Nullable List<@Nullable Place> points) {
    /**
     * A straight-tapered panel.
     *
     * @param spanMm from root to tip, square to both sections
     * @param rootChordMm chord at the root
     * @param tipChordMm chord at the tip
     * @param tipLeadingEdgeOffsetMm leading edge of the tip rearward of that of the root
     * @param rootSection section at the root
     * @param tipSection section at the tip
     * @param twistDeg tip section turned about its leading edge, nose up positive
     */
    public record Panel(
            @Nullable Double spanMm,
            @Nullable Double rootChordMm,
            @Nullable Double tipChordMm,
            @Nullable Double tipLeadingEdgeOffsetMm,
            @Nullable SectionSpec rootSection,
            @Nullable SectionSpec tipSection,
            @Nullable Double twistDeg) {}

    /**
     * A place on the skin.
     *
     * @param spanFraction 0 at the root to 1 at the tip
     * @param chordFraction of the local chord, 0 to 1
     */
    public record Place(
            @Nullable Double spanFraction, @Nullable Double chordFraction) {}
}
