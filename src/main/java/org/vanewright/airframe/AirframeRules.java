package org.vanewright.airframe;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.vanewright.airframe.AirframeDocument.Masses;
import org.vanewright.airframe.AirframeDocument.Speeds;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.record.photograph.PhotographRules;
import org.vanewright.record.provenance.ProvenanceRules;

/** What an airframe must satisfy before anything is computed from it. The bounds are those of slow light aircraft. */
public final class AirframeRules {
    public static final int MAX_SURFACES = 6;
    public static final int MAX_PANELS = 12;
    public static final int MAX_KEEP_OUTS = 40;
    static final int MAX_NAME = 120;
    static final int MAX_DESCRIPTION = 2000;

    private AirframeRules() {}

    /** Every problem, none when the airframe can be used. */
    public static List<FieldProblem> check(AirframeDocument airframe) {
        Checks checks = new Checks();
        checks.text("name", airframe.name(), MAX_NAME);
        checks.optionalText("description", airframe.description(), MAX_DESCRIPTION);
        checks.present("operatingBasis", airframe.operatingBasis(), "one of the operating bases");
        checks.range("wingAreaM2", airframe.wingAreaM2(), 1, 100, "m²");
        checkMasses(checks, airframe.masses());
        checkSpeeds(checks, airframe.speeds());
        checkSurfaces(checks, airframe.surfaces());
        ProvenanceRules.check(airframe, airframe.provenance()).forEach(checks::add);
        PhotographRules.check(airframe.photographs()).forEach(checks::add);
        return checks.problems();
    }

    private static void checkMasses(Checks checks, @Nullable Masses given) {
        Masses masses = given == null ? new Masses(null, null) : given;
        boolean empty = checks.range("masses.emptyKg", masses.emptyKg(), 30, 5700, "kg");
        boolean maximum = checks.range("masses.maximumKg", masses.maximumKg(), 60, 5700, "kg");
        if (empty && maximum && below(masses.maximumKg(), masses.emptyKg(), true)) {
            checks.require(false, "masses.maximumKg", masses.maximumKg(), "more than the empty mass");
        }
    }

    private static void checkSpeeds(Checks checks, @Nullable Speeds given) {
        Speeds s = given == null ? new Speeds(null, null, null, null, null, null) : given;
        checks.range("speeds.vs1Kt", s.vs1Kt(), 10, 120, "kt");
        checks.range("speeds.vneKt", s.vneKt(), 20, 300, "kt");
        checks.optionalRange("speeds.vs0Kt", s.vs0Kt(), 10, 120, "kt");
        checks.optionalRange("speeds.vaKt", s.vaKt(), 10, 300, "kt");
        checks.optionalRange("speeds.approachKt", s.approachKt(), 10, 200, "kt");
        checks.optionalRange("speeds.cruiseKt", s.cruiseKt(), 10, 300, "kt");

        order(checks, "speeds.vs0Kt", s.vs0Kt(), false, s.vs1Kt(), "at most the clean stall speed Vs1");
        order(checks, "speeds.vneKt", s.vs1Kt(), true, s.vneKt(), "more than the stall speed Vs1", s.vneKt());
        order(checks, "speeds.vaKt", s.vs1Kt(), true, s.vaKt(), "more than the stall speed Vs1", s.vaKt());
        order(checks, "speeds.vaKt", s.vaKt(), true, s.vneKt(), "less than Vne");
        Double slowest = s.vs0Kt() == null ? s.vs1Kt() : s.vs0Kt();
        order(checks, "speeds.approachKt", slowest, true, s.approachKt(), "more than the stall speed", s.approachKt());
        order(checks, "speeds.approachKt", s.approachKt(), true, s.vneKt(), "less than Vne");
        order(checks, "speeds.cruiseKt", s.vs1Kt(), true, s.cruiseKt(), "more than the stall speed Vs1", s.cruiseKt());
        order(checks, "speeds.cruiseKt", s.cruiseKt(), false, s.vneKt(), "at most Vne");
    }

    private static void order(
            Checks checks,
            String field,
            @Nullable Double low,
            boolean strictly,
            @Nullable Double high,
            String allowed) {
        order(checks, field, low, strictly, high, allowed, low);
    }

    private static void order(
            Checks checks,
            String field,
            @Nullable Double low,
            boolean strictly,
            @Nullable Double high,
            String allowed,
            @Nullable Double refused) {
        checks.require(low == null || high == null || !below(high, low, strictly), field, refused, allowed);
    }

    /** {@code a < b}, or {@code a <= b} when a tie counts too; false when either is absent. */
    private static boolean below(@Nullable Double a, @Nullable Double b, boolean tieCounts) {
        return a != null && b != null && (tieCounts ? a <= b : a < b);
    }

    private static void checkSurfaces(Checks checks, List<SurfaceDocument> surfaces) {
        boolean count = checks.require(
                !surfaces.isEmpty() && surfaces.size() <= MAX_SURFACES,
                "surfaces",
                surfaces.size(),
                "1 to " + MAX_SURFACES + " surfaces");
        if (!count) {
            return;
        }
        checks.require(
                surfaces.stream().anyMatch(s -> s.kind() == SurfaceDocument.Kind.WING),
                "surfaces[0].kind",
                surfaces.get(0).kind(),
                "a wing among the surfaces");
        Set<String> names = new HashSet<>();
        for (int i = 0; i < surfaces.size(); i++) {
            SurfaceDocument surface = surfaces.get(i);
            checks.addUnder("surfaces[" + i + "]", SurfaceRules.check(surface));
            String name = surface.name();
            checks.require(
                    name == null || names.add(name.strip().toLowerCase(Locale.ROOT)),
                    "surfaces[" + i + "].name",
                    name,
                    "a name no other surface has");
        }
    }
}
