package org.vanewright.engineering.placement;

/** Which way a device points against the local chordwise direction. */
public enum Hand {
    /** Leading edge turned towards the aircraft's centre line. */
    TOE_IN,
    /** Leading edge turned away from the aircraft's centre line. */
    TOE_OUT,
    /** Along the local chordwise direction; a pair on one base always is. */
    STRAIGHT;

    public static Hand of(double angleDeg) {
        if (angleDeg == 0) {
            return STRAIGHT;
        }
        return angleDeg > 0 ? TOE_IN : TOE_OUT;
    }
}
