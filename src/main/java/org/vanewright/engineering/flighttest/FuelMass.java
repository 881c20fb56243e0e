package org.vanewright.engineering.flighttest;

import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;

/** The aircraft's mass in flight. */
public final class FuelMass {
    /** As much as the largest of the machines that this is for. */
    public static final double HEAVIEST_KG = 20_000;

    private FuelMass() {}

    /**
     * From the mass at engine start and a steady fuel flow.
     *
     * @param startMassKg at engine start
     * @param flowLitresPerHour mean since then
     * @param minutes since then
     * @param densityKgPerLitre of the fuel
     * @throws InvalidInputException naming each field that is out of range; {@code minutes} where more was burned than the
     *     aircraft weighed
     */
    public static double afterFlowKg(
            double startMassKg, double flowLitresPerHour, double minutes, double densityKgPerLitre) {
        Checks checks = new Checks();
        checks.range("startMassKg", startMassKg, 10, HEAVIEST_KG, "kg");
        checks.range("flowLitresPerHour", flowLitresPerHour, 0, 2_000, "l/h");
        checks.range("minutes", minutes, 0, 6_000, "min");
        checks.range("densityKgPerLitre", densityKgPerLitre, 0.5, 1.2, "kg/l");
        checks.throwIfAny();
        double massKg = startMassKg - flowLitresPerHour * minutes / 60 * densityKgPerLitre;
        checks.require(
                massKg > startMassKg / 2, "minutes", minutes, "a time in which less than half of the mass is burned");
        checks.throwIfAny();
        return massKg;
    }

    /**
     * From the fuel that is left.
     *
     * @param startMassKg with {@code startLitres} aboard
     * @throws InvalidInputException naming each field that is out of range; {@code remainingLitres} where more is left than
     *     there was
     */
    public static double withRemainingKg(
            double startMassKg, double startLitres, double remainingLitres, double densityKgPerLitre) {
        Checks checks = new Checks();
        checks.range("startMassKg", startMassKg, 10, HEAVIEST_KG, "kg");
        checks.range("startLitres", startLitres, 0, 10_000, "l");
        checks.range("densityKgPerLitre", densityKgPerLitre, 0.5, 1.2, "kg/l");
        checks.range("remainingLitres", remainingLitres, 0, Math.max(0, startLitres), "l");
        checks.throwIfAny();
        double massKg = startMassKg - (startLitres - remainingLitres) * densityKgPerLitre;
        checks.require(
                massKg > startMassKg / 2,
                "startLitres",
                startLitres,
                "less fuel than half of the mass of the aircraft");
        checks.throwIfAny();
        return massKg;
    }
}
