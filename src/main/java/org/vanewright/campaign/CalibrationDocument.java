package org.vanewright.campaign;

import org.jspecify.annotations.Nullable;
import org.vanewright.record.RevisionRef;

/**
 * Where the correction of indicated airspeeds comes from.
 *
 * @param campaign exact revision of another campaign on the same airframe; absent for this one's own runs
 * @param degree of the curve through its runs: 1 for a line, 2 for a parabola
 */
public record CalibrationDocument(
        @Nullable RevisionRef campaign, @Nullable Integer degree) {
    static final CalibrationDocument NONE = new CalibrationDocument(null, null);

    /** A line, unless something else is chosen. */
    public int degreeOrLine() {
        return degree == null ? 1 : degree;
    }
}
