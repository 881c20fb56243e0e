package org.vanewright.campaign;

import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;

/** What must hold of a test point. The bounds are those of slow light aircraft. */
public final class PointRules {
    /** Legs of one airspeed calibration. */
    public static final int MAX_LEGS = 12;

    static final int FEWEST_LEGS = 3;

    private static final Pattern ID = Pattern.compile("[A-Za-z0-9-]{1,40}");
    private static final Instant EARLIEST = Instant.parse("1900-01-01T00:00:00Z");

    private PointRules() {}

    /** Every problem of one test point, with the fields named as they stand in it. */
    public static List<FieldProblem> check(PointDocument p, PlanDocument plan) {
        Checks checks = new Checks();
        String id = p.id();
        checks.require(id != null && ID.matcher(id).matches(), "id", id, "1 to 40 letters, digits or hyphens");
        boolean kind = checks.present("kind", p.kind(), "STALL, CRUISE, CLIMB or AIRSPEED");
        if (plan.configuration(p.configuration()).isEmpty()) {
            checks.require(
                    false,
                    "configuration",
                    p.configuration(),
                    "the key of one of the configurations: " + String.join(", ", plan.keys()));
        }
        whole("sortie", p.sortie(), true, checks);
        whole("block", p.block(), false, checks);
        checks.require(p.at() == null || isInstant(p.at()), "at", p.at(), "a time such as 2026-05-02T09:14:00Z");
        checks.range("indicatedAirspeedKt", p.indicatedAirspeedKt(), 5, 350, "kt");
        checks.range("pressureAltitudeFt", p.pressureAltitudeFt(), -1000, 25_000, "ft");
        checks.range("outsideAirTemperatureC", p.outsideAirTemperatureC(), -60, 60, "°C");
        checks.optionalText("remark", p.remark(), 1000);
        if (kind) {
            ofKind(p, checks);
        }
        return checks.problems();
    }

    private static void ofKind(PointDocument p, Checks checks) {
        PointKind kind = p.kind();
        if (kind == PointKind.AIRSPEED) {
            legs(p, checks);
            return;
        }
        mass(p, checks);
        if (kind == PointKind.STALL) {
            checks.optionalRange("loadFactor", p.loadFactor(), 0.5, 4, "");
            checks.optionalRange("entryRateKtPerS", p.entryRateKtPerS(), 0, 15, "kt/s");
            checks.optionalRange("warningAirspeedKt", p.warningAirspeedKt(), 5, 350, "kt");
            checks.optionalRange("wingDropDeg", p.wingDropDeg(), 0, 180, "°");
        } else {
            checks.range("powerPercent", p.powerPercent(), 1, 120, "%");
        }
        if (kind == PointKind.CLIMB) {
            checks.range("climbRateFtPerMin", p.climbRateFtPerMin(), -3000, 5000, "ft/min");
        }
    }

    private static void mass(PointDocument p, Checks checks) {
        if (p.massKg() != null) {
            checks.range("massKg", p.massKg(), 60, 5700, "kg");
            return;
        }
        boolean start = checks.range("startMassKg", p.startMassKg(), 60, 5700, "kg");
        boolean used = checks.optionalRange("fuelUsedKg", p.fuelUsedKg(), 0, 1000, "kg");
        Double then = p.massThenKg();
        if (start && used && then != null) {
            checks.require(then >= 60, "fuelUsedKg", p.fuelUsedKg(), "less than what there was at the start");
        }
    }

    private static void legs(PointDocument p, Checks checks) {
        int count = p.legs().size();
        checks.require(
                count >= FEWEST_LEGS && count <= MAX_LEGS, "legs", count, FEWEST_LEGS + " to " + MAX_LEGS + " legs");
        boolean headings = count > 0 && p.legs().get(0).headingDeg() != null;
        for (int i = 0; i < Math.min(count, MAX_LEGS); i++) {
            LegDocument leg = p.legs().get(i);
            String at = "legs[" + i + "]";
            checks.range(at + ".groundSpeedKt", leg.groundSpeedKt(), 1, 500, "kt");
            Double given = headings ? leg.headingDeg() : leg.trackDeg();
            checks.range(at + (headings ? ".headingDeg" : ".trackDeg"), given, 0, 360, "°");
            Double other = headings ? leg.trackDeg() : leg.headingDeg();
            checks.require(
                    other == null,
                    at + (headings ? ".trackDeg" : ".headingDeg"),
                    other,
                    "tracks of all legs, or headings of all legs");
        }
    }

    private static void whole(String field, @Nullable Integer number, boolean needed, Checks checks) {
        checks.require(
                number == null ? !needed : number >= 1 && number <= 999, field, number, "a whole number from 1 to 999");
    }

    static boolean isInstant(String text) {
        try {
            return Instant.parse(text).isAfter(EARLIEST);
        } catch (DateTimeParseException e) {
            return false;
        }
    }
}
