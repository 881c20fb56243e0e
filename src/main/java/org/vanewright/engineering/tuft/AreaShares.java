package org.vanewright.engineering.tuft;

/**
 * What part of the area that was seen is in each state.
 *
 * @param steady fraction of the area seen; 0 where nothing was seen
 * @param unsteady fraction of the area seen
 * @param reversed fraction of the area seen
 * @param seenMm2 area of the tufts that were seen
 * @param surveyedMm2 area of all tufts of the grid
 * @param seen number of tufts seen
 * @param tufts number of tufts of the grid
 */
public record AreaShares(
        double steady, double unsteady, double reversed, double seenMm2, double surveyedMm2, int seen, int tufts) {
    /** Fraction of the surveyed area of which nothing is known. */
    public double notSeen() {
        return surveyedMm2 == 0 ? 0 : 1 - seenMm2 / surveyedMm2;
    }

    /** The fraction in a state that was seen; for {@link TuftState#NOT_SEEN} that of the surveyed area. */
    public double of(TuftState state) {
        return switch (state) {
            case STEADY -> steady;
            case UNSTEADY -> unsteady;
            case REVERSED -> reversed;
            case NOT_SEEN -> notSeen();
        };
    }
}
