package org.vanewright.method;

import java.util.List;
import java.util.function.DoubleSupplier;
import org.vanewright.engineering.bond.BaseBending;
import org.vanewright.engineering.bond.BondLoad;
import org.vanewright.engineering.bond.BondStress;
import org.vanewright.engineering.bond.FlexibleBase;
import org.vanewright.engineering.bond.LineLoadUnit;
import org.vanewright.engineering.bond.RigidBase;
import org.vanewright.engineering.bond.StressUnit;
import org.vanewright.engineering.bond.TapedBase;
import org.vanewright.engineering.flow.PublishedCheck;
import org.vanewright.engineering.flow.PublishedCheck.HowKnown;

/** Bonded bases beside figures worked out by hand and closed forms, and units beside their definitions. */
final class BondChecks {
    private static final String GROUP = "Bond";
    private static final String CASE =
            "60 m/s EAS, vane 10 by 20 mm, C_N 1.2, base 25 by 12 mm, tape without thickness";
    private static final String RIGID = "Rigid footing on an elastic layer, worked out by hand";
    private static final String HETENYI = "M. Hetényi, Beams on Elastic Foundation, 1946, infinite beam under a couple";
    private static final String DEFINITIONS = "Pound, inch and standard acceleration by definition";

    /** 60 m/s. */
    private static final double SPEED_KT = 60 * 3600 / 1852.0;

    private static final double LONG_MM = 400;

    private BondChecks() {}

    static List<PublishedCheck> list() {
        return List.of(
                check("Side force", CASE, () -> load().forceN(), 0.52920, 1e-4, "N", RIGID, HowKnown.DERIVED),
                check("Shear stress", CASE, () -> stress().shearPa(), 1764.0, 0.2, "Pa", RIGID, HowKnown.DERIVED),
                check("Peak tension", CASE, () -> stress().peakTensionPa(), 4410.0, 0.5, "Pa", RIGID, HowKnown.DERIVED),
                check(
                        "Cleavage line load",
                        CASE,
                        () -> stress().cleavageNPerCm(),
                        0.1323,
                        1e-4,
                        "N/cm",
                        RIGID,
                        HowKnown.DERIVED),
                check(
                        "Peak tension of a long bending base, over M λ²/k times the modulus of the layer",
                        "base 400 mm across, couple at its middle",
                        BondChecks::longBase,
                        0.32240,
                        1e-4,
                        "",
                        HETENYI,
                        HowKnown.FROM_MEMORY),
                unit("1 lb/in", LineLoadUnit.LBF_PER_IN.toNPerCm(1), 1.751268, "N/cm"),
                unit("1 oz/in", LineLoadUnit.OZF_PER_IN.toNPerCm(1), 0.109454, "N/cm"),
                unit("1 kgf/25 mm", LineLoadUnit.KGF_PER_25_MM.toNPerCm(1), 3.92266, "N/cm"),
                unit("1 psi", StressUnit.PSI.toKPa(1), 6.894757, "kPa"));
    }

    private static BondLoad load() {
        return BondLoad.ofAir(1.2, 10, 20, SPEED_KT);
    }

    private static BondStress stress() {
        return RigidBase.under(new TapedBase(25, 12, 0), load());
    }

    /** y = M λ²/k e^(−λ x) sin λ x, highest at λ x = π/4. */
    private static double longBase() {
        TapedBase base = new TapedBase(25, LONG_MM, 1);
        FlexibleBase bent = FlexibleBase.under(
                base, new BaseBending(2e9, 1, 6e5, List.of(LONG_MM / 2)), List.of(BondLoad.of(1, 9)));
        double lambda = bent.betaAcross() / (LONG_MM * 1e-3);
        double edgeM = 0.025;
        return bent.stress().peakTensionPa() * edgeM / (bent.stress().momentNm() * lambda * lambda);
    }

    private static PublishedCheck unit(String quantity, double computed, double published, String unit) {
        return check(quantity, "by definition", () -> computed, published, 1e-6, unit, DEFINITIONS, HowKnown.DERIVED);
    }

    private static PublishedCheck check(
            String quantity,
            String conditions,
            DoubleSupplier computed,
            double published,
            double tolerance,
            String unit,
            String source,
            HowKnown howKnown) {
        return new PublishedCheck(
                GROUP, quantity, conditions, computed, published, tolerance, unit, source, howKnown, null);
    }
}
