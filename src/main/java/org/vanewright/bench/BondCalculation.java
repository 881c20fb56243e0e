package org.vanewright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.bond.BondLoad;
import org.vanewright.engineering.bond.BondMargins;
import org.vanewright.engineering.bond.BondStrength;
import org.vanewright.engineering.bond.BondStress;
import org.vanewright.engineering.bond.KnockDown;
import org.vanewright.engineering.bond.RigidBase;
import org.vanewright.engineering.bond.TapedBase;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;

/** Stress under one base and the margins of its adhesive. */
public final class BondCalculation {
    static final String METHOD =
            "Side force F = q C_N h l at half the vane's height, or as given. Shear stress τ = F/A; moment M = F (h_F + t)"
                    + " across the base; peak tension σ = 6 M/(L b²) by a rigid base on linearly elastic tape; cleavage line"
                    + " load T = σ b/4. Margins are strengths over these, without knock-down for heat, age or surface. A thin"
                    + " base on stiff tape bends, which gathers the tension near the vane: the bench page and the bond"
                    + " check of a layout look at that, too.";
    static final List<String> SOURCES = List.of(
            "Rigid rectangular base on an elastic layer: first-order mechanics, derived; no published check of stick-on"
                    + " devices was found",
            "M. Hetényi, Beams on Elastic Foundation, University of Michigan Press, 1946: when a base counts as rigid (from"
                    + " memory)",
            "ASTM D3330/D3330M-04(2018), Standard Test Method for Peel Adhesion of Pressure-Sensitive Tape: its warning about"
                    + " stiff backings (read in a published copy)");
    private static final double SQUARE_TO_AIR = 2;

    private BondCalculation() {}

    /** @throws InvalidInputException naming each field of the request that is missing or out of range */
    public static BondResult run(BondRequest request) {
        check(request);
        BondLoad load = load(request);
        TapedBase base = new TapedBase(
                number(request.baseLengthMm()), number(request.baseWidthMm()), number(request.tapeThicknessMm()));
        BondStress stress = RigidBase.under(base, load);
        BondRequest.Adhesive a = Objects.requireNonNull(request.adhesive());
        BondMargins margins =
                new BondStrength(a.peelNPerCm(), a.shearKPa(), a.tensileKPa()).over(stress, KnockDown.NONE);
        return new BondResult(
                load.forceN(),
                stress.shearPa(),
                stress.peakTensionPa(),
                stress.cleavageNPerCm(),
                new BondResult.Margins(number(margins.shear()), number(margins.tension()), number(margins.cleavage())),
                METHOD,
                SOURCES,
                validity(request, margins));
    }

    private static void check(BondRequest r) {
        Checks checks = new Checks();
        checks.range("baseLengthMm", r.baseLengthMm(), 1, 1_000, "mm");
        checks.range("baseWidthMm", r.baseWidthMm(), 1, 1_000, "mm");
        checks.range("tapeThicknessMm", r.tapeThicknessMm(), 0, 10, "mm");
        if (r.sideForceN() == null) {
            checks.require(
                    r.equivalentAirspeedKt() != null,
                    "equivalentAirspeedKt",
                    r.equivalentAirspeedKt(),
                    "a speed from 1 kt to 600 kt, or a sideForceN with its forceHeightMm");
            checks.range("vaneHeightMm", r.vaneHeightMm(), 0.1, 500, "mm");
            checks.range("vaneLengthMm", r.vaneLengthMm(), 0.1, 1_000, "mm");
            checks.range("normalForceCoefficient", r.normalForceCoefficient(), 0.001, 10, "");
            checks.optionalRange("equivalentAirspeedKt", r.equivalentAirspeedKt(), 1, 600, "kt");
            checks.optionalRange("forceHeightMm", r.forceHeightMm(), 0, 1_000, "mm");
        } else {
            checks.range("sideForceN", r.sideForceN(), 0.000_1, 100_000, "N");
            checks.range("forceHeightMm", r.forceHeightMm(), 0, 1_000, "mm");
            checks.require(
                    r.equivalentAirspeedKt() == null,
                    "equivalentAirspeedKt",
                    r.equivalentAirspeedKt(),
                    "absent where sideForceN is given");
            checks.optionalRange("vaneHeightMm", r.vaneHeightMm(), 0.1, 500, "mm");
            checks.optionalRange("vaneLengthMm", r.vaneLengthMm(), 0.1, 1_000, "mm");
            checks.optionalRange("normalForceCoefficient", r.normalForceCoefficient(), 0.001, 10, "");
        }
        BondRequest.Adhesive a = r.adhesive();
        if (checks.present("adhesive", a, "strengths: peelNPerCm, shearKPa and tensileKPa") && a != null) {
            checks.range("adhesive.peelNPerCm", a.peelNPerCm(), 0.001, 10_000, "N/cm");
            checks.range("adhesive.shearKPa", a.shearKPa(), 0.001, 1_000_000, "kPa");
            checks.range("adhesive.tensileKPa", a.tensileKPa(), 0.001, 1_000_000, "kPa");
        }
        checks.throwIfAny();
    }

    private static BondLoad load(BondRequest r) {
        if (r.sideForceN() != null) {
            return BondLoad.of(r.sideForceN(), number(r.forceHeightMm()));
        }
        BondLoad air = BondLoad.ofAir(
                number(r.normalForceCoefficient()),
                number(r.vaneHeightMm()),
                number(r.vaneLengthMm()),
                number(r.equivalentAirspeedKt()));
        return r.forceHeightMm() == null ? air : BondLoad.of(air.forceN(), r.forceHeightMm());
    }

    private static List<String> validity(BondRequest request, BondMargins margins) {
        List<String> warnings = new ArrayList<>();
        Double coefficient = request.normalForceCoefficient();
        if (coefficient != null && coefficient > SQUARE_TO_AIR) {
            warnings.add(
                    "A plate square to the air has a normal force coefficient of about 2 (from memory); this is more.");
        }
        Double height = request.forceHeightMm();
        Double vane = request.vaneHeightMm();
        if (height != null && vane != null && height > 2 * vane) {
            warnings.add("The force acts far above the vane.");
        }
        margins.weakest()
                .filter(mode -> number(margins.of(mode)) < 1)
                .ifPresent(mode -> warnings.add("By these figures the bond gives way: " + mode.words() + "."));
        return List.copyOf(warnings);
    }

    private static double number(@Nullable Double checked) {
        if (checked == null) {
            throw new IllegalStateException("checked before");
        }
        return checked;
    }
}
