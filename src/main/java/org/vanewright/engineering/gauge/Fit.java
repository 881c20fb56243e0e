package org.vanewright.engineering.gauge;

/**
 * How a gauge sits at a station it was not cut for, moved to where it fits best.
 *
 * @param openMm most that the shell stands off beyond its clearance
 * @param pressMm most of the clearance that is used up, not negative
 * @param placeMm most that a slot is off its distance along the skin
 * @param forwardMm how far the shell is moved along x beyond the leading edge's own way, rearward positive
 * @param upMm along z
 * @param turnRad about the span axis through the leading edge, from x towards z
 */
public record Fit(double openMm, double pressMm, double placeMm, double forwardMm, double upMm, double turnRad) {
    /** At the station it was cut for. */
    static final Fit EXACT = new Fit(0, 0, 0, 0, 0, 0);

    boolean within(GaugeSettings settings) {
        return openMm <= settings.gapMm() && pressMm <= settings.pressMm() && placeMm <= settings.placeMm();
    }

    /** The greater of each of the two; where the shell lies stays with the first. */
    Fit worse(Fit other) {
        return new Fit(
                Math.max(openMm, other.openMm),
                Math.max(pressMm, other.pressMm),
                Math.max(placeMm, other.placeMm),
                forwardMm,
                upMm,
                turnRad);
    }
}
