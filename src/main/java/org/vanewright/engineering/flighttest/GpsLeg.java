package org.vanewright.engineering.flighttest;

/**
 * One straight leg at a steady indicated airspeed and altitude.
 *
 * @param groundSpeedKt mean over the leg
 * @param directionDeg track over the ground or heading, true, clockwise from north
 */
public record GpsLeg(double groundSpeedKt, double directionDeg) {
    double east() {
        return Math.sin(Math.toRadians(directionDeg));
    }

    double north() {
        return Math.cos(Math.toRadians(directionDeg));
    }
}
