package org.vanewright.bond;

import org.vanewright.engineering.bond.KnockDown;

/** What the check assumes where nobody says better, each with its origin. */
public enum BondAssumption {
    LOAD_FACTOR(
            "loadFactor",
            "Factor on the air load",
            "",
            1.5,
            1,
            10,
            "from limit to ultimate load, 14 CFR 23.303 as it stood before 2017 (from memory)"),
    SPEED_RATIO(
            "speedRatio",
            "Local speed over airspeed",
            "",
            1.3,
            0.5,
            4,
            "engineering judgement, no source; the placement study works it out"),
    SIDESLIP_DEG("sideslipDeg", "Sideslip added to the angle", "°", 10, 0, 40, "engineering judgement, no source"),
    KNOCK_N(
            "knockN",
            "Knock at the tip",
            "N",
            20,
            0.1,
            1_000,
            "engineering judgement, no source: a hand that wipes, the weight of two kilograms"),
    TEMPERATURE_FACTOR(
            "temperatureFactor",
            "Left by heat",
            "",
            KnockDown.USUAL.temperature(),
            0.01,
            1,
            "engineering judgement, no source"),
    AGEING_FACTOR(
            "ageingFactor", "Left by age", "", KnockDown.USUAL.ageing(), 0.01, 1, "engineering judgement, no source"),
    SURFACE_FACTOR(
            "surfaceFactor",
            "Left by the surface",
            "",
            KnockDown.USUAL.surface(),
            0.01,
            1,
            "engineering judgement, no source"),
    BASE_MODULUS_MPA(
            "baseModulusMPa", "Young’s modulus of the print", "MPa", 2_000, 10, 500_000, "of ABS, from memory"),
    TAPE_MODULUS_KPA(
            "tapeModulusKPa",
            "Modulus of the tape",
            "kPa",
            600,
            1,
            20_000_000,
            "of the adhesive where stated, else by its class: engineering judgement, no source");

    private final String field;
    private final String label;
    private final String unit;
    private final double usual;
    private final double least;
    private final double most;
    private final String origin;

    BondAssumption(String field, String label, String unit, double usual, double least, double most, String origin) {
        this.field = field;
        this.label = label;
        this.unit = unit;
        this.usual = usual;
        this.least = least;
        this.most = most;
        this.origin = origin;
    }

    /** Its name in forms and addresses. */
    public String field() {
        return field;
    }

    public String label() {
        return label;
    }

    public String unit() {
        return unit;
    }

    public double usual() {
        return usual;
    }

    public double least() {
        return least;
    }

    public double most() {
        return most;
    }

    public String origin() {
        return origin;
    }

    /** The usual value and where it comes from, for a hint. */
    public String usualInWords() {
        String value = usual == Math.rint(usual) ? Long.toString((long) usual) : Double.toString(usual);
        String said = this == TAPE_MODULUS_KPA ? "" : "Usually " + value + (unit.isEmpty() ? "" : " " + unit) + ": ";
        return said.isEmpty()
                ? Character.toUpperCase(origin.charAt(0)) + origin.substring(1) + "."
                : said + origin + ".";
    }
}
