package org.vanewright.engineering.flightlog;

/** Compass angles in degrees. */
final class Angles {
    private Angles() {}

    /** The same direction from 0 up to 360. */
    static double compass(double degrees) {
        double turned = degrees % 360;
        return turned < 0 ? turned + 360 : turned;
    }

    /** From the one to the other the short way, -180 to 180. */
    static double turn(double fromDeg, double toDeg) {
        return compass(toDeg - fromDeg + 180) - 180;
    }
}
