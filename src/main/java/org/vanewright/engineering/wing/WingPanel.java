package org.vanewright.engineering.wing;

import org.vanewright.engineering.section.Section;

/**
 * A straight-tapered piece of a surface between two span stations. Span stations count from the aircraft's centre line
 * outboard; leading-edge offsets count rearward from one datum of the surface. Corresponding points of the two end
 * sections (same chord fraction) are joined by straight lines.
 *
 * @param innerStationMm span station of the inner end
 * @param outerStationMm span station of the outer end, greater than the inner
 * @param innerChordMm chord at the inner end
 * @param outerChordMm chord at the outer end
 * @param innerLeadingEdgeMm leading-edge offset at the inner end, rearward positive
 * @param outerLeadingEdgeMm leading-edge offset at the outer end
 * @param innerSection section at the inner end
 * @param outerSection section at the outer end
 * @param twistDeg outer section turned about its leading edge against the inner one, nose up positive
 */
public record WingPanel(
        double innerStationMm,
        double outerStationMm,
        double innerChordMm,
        double outerChordMm,
        double innerLeadingEdgeMm,
        double outerLeadingEdgeMm,
        Section innerSection,
        Section outerSection,
        double twistDeg) {
    public double spanMm() {
        return outerStationMm - innerStationMm;
    }

    /** Local chord at a span station within the panel. */
    public double chordMm(double stationMm) {
        return innerChordMm + spanFraction(stationMm) * (outerChordMm - innerChordMm);
    }

    /** Leading-edge offset at a span station within the panel. */
    public double leadingEdgeMm(double stationMm) {
        return innerLeadingEdgeMm + spanFraction(stationMm) * (outerLeadingEdgeMm - innerLeadingEdgeMm);
    }

    /** 0 at the inner end, 1 at the outer end. */
    public double spanFraction(double stationMm) {
        return (stationMm - innerStationMm) / spanMm();
    }

    /** True when the skin unrolls without strain: end sections of one shape, no twist. */
    public boolean developable() {
        return twistDeg == 0 && innerSection.sameShapeAs(outerSection);
    }
}
