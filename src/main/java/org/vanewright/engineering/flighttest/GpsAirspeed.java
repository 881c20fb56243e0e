package org.vanewright.engineering.flighttest;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * True airspeed and wind from ground speeds on three or more legs that were flown at one airspeed in one wind.
 *
 * @param known which directions were given
 * @param trueAirspeedKt through the air
 * @param windSpeedKt over the ground
 * @param windFromDeg where it blows from, true, 0 to 360
 * @param otherDirectionsDeg headings where tracks were given, tracks where headings were, one for each leg, 0 to 360
 * @param residualsKt by how much each leg misses the fit: its airspeed where tracks were given, its ground speed where
 *     headings were; all 0 for three legs, which any airspeed and wind fit
 * @param residualKt scatter of a leg, √(Σ r²/(n − 3)); null for three legs
 * @param covarianceKt2 of true airspeed, wind towards the east and wind towards the north; null for three legs
 * @param spreadDeg widest gap that the directions leave, taken from 360: 0 where all point one way, 240 for thirds of a circle
 */
public record GpsAirspeed(
        Directions known,
        double trueAirspeedKt,
        double windSpeedKt,
        double windFromDeg,
        List<Double> otherDirectionsDeg,
        List<Double> residualsKt,
        @Nullable Double residualKt,
        @Nullable List<List<Double>> covarianceKt2,
        double spreadDeg) {
    /** Fewer legs determine nothing. */
    public static final int FEWEST_LEGS = 3;

    /** Sums to more than any campaign has. */
    public static final int MOST_LEGS = 500;

    /** Directions closer together than this make a poor triangle. */
    public static final double GOOD_SPREAD_DEG = 150;

    /** What the directions of legs are. */
    public enum Directions {
        /** Tracks over the ground, as a GPS shows them. */
        TRACKS,
        /** Headings, as a compass corrected for deviation and variation shows them. */
        HEADINGS
    }

    /**
     * Tracks known. The tips of the ground-speed vectors lie on a circle about the wind whose radius is the airspeed: through
     * three there is one circle; for more, the circle with the least squares of distance from it.
     *
     * <p>D. Gray, Using GPS to Accurately Determine True Airspeed, 1998 (quoted second-hand); Society of Flight Test
     * Engineers, Reference Handbook, 2013, part 4.
     *
     * @throws InvalidInputException field {@code legs…}: too few, out of range, or no circle through them
     */
    public static GpsAirspeed ofTracks(List<GpsLeg> legs) {
        return GpsSolution.of(Directions.TRACKS, legs);
    }

    /**
     * Headings known. With s the ground speed, ψ the heading and (a, b) the wind, s² = V² + W² + 2 V (a sin ψ + b cos ψ), a
     * linear system for three legs, solved for the airspeed above the wind speed; for more, the least squares of ground speed.
     *
     * <p>Society of Flight Test Engineers, Reference Handbook, 2013, part 4; the law of cosines.
     *
     * @throws InvalidInputException field {@code legs…}: too few, out of range, or no airspeed and wind that fit
     */
    public static GpsAirspeed ofHeadings(List<GpsLeg> legs) {
        return GpsSolution.of(Directions.HEADINGS, legs);
    }

    /** Standard uncertainty of the true airspeed from the scatter of the legs; null for three. */
    public @Nullable Double standardUncertaintyKt() {
        return covarianceKt2 == null
                ? null
                : (Double) Math.sqrt(covarianceKt2.get(0).get(0));
    }
}
