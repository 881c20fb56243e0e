package org.vanewright.airframe;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.vanewright.record.Revision;
import org.vanewright.record.check.CheckResult;
import org.vanewright.record.check.SubmissionChecks;

/** Whether the figures of an airframe fit each other. What has no source is common practice. */
@Component
class AirframeChecks implements SubmissionChecks<AirframeDocument> {
    private static final double AREA_SHARE = 0.15;
    private static final double LOWEST_LIFT = 0.8;
    private static final double HIGHEST_LIFT = 3.2;
    private static final double LOWEST_ASPECT = 3;
    private static final double HIGHEST_ASPECT = 30;
    private static final double LOWEST_EMPTY_SHARE = 0.3;
    private static final double HIGHEST_EMPTY_SHARE = 0.85;

    /** Sea level of the International Standard Atmosphere, ISO 2533:1975. */
    private static final double DENSITY_KG_M3 = 1.225;

    /** Standard acceleration, CGPM 1901. */
    private static final double GRAVITY_M_S2 = 9.80665;

    private static final double METRES_PER_SECOND_PER_KNOT = 1852.0 / 3600;

    @Override
    public String kind() {
        return "airframe";
    }

    @Override
    public List<CheckResult> run(Revision<AirframeDocument> revision) {
        AirframeDocument airframe = revision.content();
        List<CheckResult> results = new ArrayList<>();
        double described = airframe.surfaces().stream()
                .filter(s -> s.kind() == SurfaceDocument.Kind.WING)
                .mapToDouble(Surfaces::areaM2)
                .sum();
        Double area = airframe.wingAreaM2();
        if (area != null) {
            results.add(area(area, described));
            results.add(aspect(airframe, area));
        }
        results.add(masses(airframe.masses()));
        results.add(speeds(airframe.speeds()));
        AirframeDocument.Masses masses = airframe.masses();
        AirframeDocument.Speeds speeds = airframe.speeds();
        if (area != null && masses != null && speeds != null && masses.maximumKg() != null) {
            lift("Lift at the clean stall", masses.maximumKg(), area, speeds.vs1Kt(), results);
            lift("Lift at the stall with flaps", masses.maximumKg(), area, speeds.vs0Kt(), results);
        }
        return results;
    }

    private static CheckResult area(double stated, double described) {
        double share = Math.abs(described - stated) / stated;
        return judged(
                "Wing area",
                share <= AREA_SHARE,
                "Stated %.2f m², the panels make %.2f m² without what lies between the roots: %.0f %% apart; usual is at"
                        + " most %.0f %% (common practice, no source).",
                stated,
                described,
                share * 100,
                AREA_SHARE * 100);
    }

    private static CheckResult aspect(AirframeDocument airframe, double area) {
        double halfSpanMm = airframe.surfaces().stream()
                .filter(s -> s.kind() == SurfaceDocument.Kind.WING)
                .flatMap(s -> Surfaces.stationsMm(s).stream())
                .mapToDouble(Double::doubleValue)
                .max()
                .orElse(0);
        double ratio = Math.pow(2 * halfSpanMm / 1000, 2) / area;
        return judged(
                "Aspect ratio",
                ratio >= LOWEST_ASPECT && ratio <= HIGHEST_ASPECT,
                "Span² by area is %.1f; light aircraft and gliders have %.0f to %.0f (common practice, no source).",
                ratio,
                LOWEST_ASPECT,
                HIGHEST_ASPECT);
    }

    private static CheckResult masses(AirframeDocument.@Nullable Masses masses) {
        double empty = masses == null ? 0 : number(masses.emptyKg());
        double maximum = masses == null ? 0 : number(masses.maximumKg());
        double share = maximum > 0 ? empty / maximum : 0;
        return judged(
                "Masses",
                share >= LOWEST_EMPTY_SHARE && share <= HIGHEST_EMPTY_SHARE,
                "Empty is %.0f %% of maximum; usual is %.0f to %.0f %% (common practice, no source).",
                share * 100,
                LOWEST_EMPTY_SHARE * 100,
                HIGHEST_EMPTY_SHARE * 100);
    }

    private static CheckResult speeds(AirframeDocument.@Nullable Speeds speeds) {
        List<Double> stated = new ArrayList<>();
        if (speeds != null) {
            for (Double speed :
                    new @Nullable Double[] {speeds.vs0Kt(), speeds.vs1Kt(), speeds.vaKt(), speeds.vneKt()}) {
                if (speed != null) {
                    stated.add(speed);
                }
            }
        }
        boolean ordered = stated.equals(stated.stream().sorted().toList());
        return judged(
                "Speeds in order",
                ordered && !stated.isEmpty(),
                "Of those stated, stall with flaps, clean stall, manoeuvring and never-exceed speed %s in this order.",
                ordered ? "follow each other" : "do not follow each other");
    }

    /** From level flight at the stall, lift equal to weight: CL = 2 m g / (ρ V² S). */
    private static void lift(
            String name, double massKg, double areaM2, @Nullable Double stallKt, List<CheckResult> results) {
        if (stallKt == null) {
            return;
        }
        double speed = stallKt * METRES_PER_SECOND_PER_KNOT;
        double coefficient = 2 * massKg * GRAVITY_M_S2 / (DENSITY_KG_M3 * speed * speed * areaM2);
        results.add(judged(
                name,
                coefficient >= LOWEST_LIFT && coefficient <= HIGHEST_LIFT,
                "At %.0f kt and maximum mass, lift equal to weight asks for a lift coefficient of %.2f; usual is %.1f to"
                        + " %.1f (common practice, no source).",
                stallKt,
                coefficient,
                LOWEST_LIFT,
                HIGHEST_LIFT));
    }

    private static double number(@Nullable Double stated) {
        return stated == null ? 0 : stated;
    }

    private static CheckResult judged(String name, boolean usual, String pattern, Object... figures) {
        String detail = String.format(Locale.ROOT, pattern, figures);
        return usual ? CheckResult.passed(name, detail) : CheckResult.noticed(name, detail);
    }
}
