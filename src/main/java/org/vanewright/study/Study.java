package org.vanewright.study;

import java.util.List;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.record.Revision;

/**
 * A placement study.
 *
 * @param airframe exact revision
 * @param state the flight condition
 * @param surfaces each with its rows
 */
public record Study(Revision<AirframeDocument> airframe, FlightState state, List<Surface> surfaces) {
    /** How it is computed. */
    public static final String METHOD =
            "Lift equal to weight gives the lift coefficient of the wing; a lifting line spreads it along the span. At the"
                    + " middle device of each row the section's flow is computed with boundary layers on both sides at the"
                    + " local lift coefficient and Reynolds number; the layer is read off where the device stands.";

    /** Where the methods come from; the flow's own sources stand with it. */
    public static final List<String> SOURCES = List.of(
            "H. Glauert, The Elements of Aerofoil and Airscrew Theory, 2nd edition, 1947, chapter XI (from memory)",
            "B. J. Wendt, Initial Circulation and Peak Vorticity Behavior of Vortices Shed from Airfoil Vortex Generators,"
                    + " NASA/CR-2001-211144, 2001 (quoted second-hand)",
            "E. C. Polhamus, A Concept of the Vortex Lift of Sharp-Edge Delta Wings Based on a Leading-Edge-Suction Analogy,"
                    + " NASA TN D-3767, 1966 (from memory)");

    /**
     * One wing.
     *
     * @param name as in the airframe
     * @param areaM2 of both halves, with the part between the roots
     * @param aspectRatio of that
     * @param liftCoefficient of that, in level flight
     * @param lift local lift coefficient along the span: station in mm, coefficient
     * @param rows on it
     * @param alongSpeed the same rows from the clean stall to cruise; empty where the airframe does not state both speeds
     */
    public record Surface(
            String name,
            double areaM2,
            double aspectRatio,
            double liftCoefficient,
            List<SpanLift> lift,
            List<RowStudy> rows,
            List<SpeedPoint> alongSpeed) {}

    /**
     * Local lift.
     *
     * @param stationMm from the centre line
     * @param liftCoefficient of the section there
     */
    public record SpanLift(double stationMm, double liftCoefficient) {}
}
