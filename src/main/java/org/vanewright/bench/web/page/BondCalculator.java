package org.vanewright.bench.web.page;

import static org.vanewright.bench.web.page.Shown.digits;
import static org.vanewright.bench.web.page.Shown.fixed;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.vanewright.bench.BondCalculation;
import org.vanewright.bench.BondRequest;
import org.vanewright.bench.BondResult;
import org.vanewright.engineering.bond.BaseBending;
import org.vanewright.engineering.bond.BondLoad;
import org.vanewright.engineering.bond.BondMargins;
import org.vanewright.engineering.bond.FlexibleBase;
import org.vanewright.engineering.bond.LineLoadUnit;
import org.vanewright.engineering.bond.StressUnit;
import org.vanewright.engineering.bond.TapedBase;
import org.vanewright.engineering.input.Checks;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.Option;
import org.vanewright.platform.page.Units;

/** Stress under one base and the margins of its adhesive. */
@Component
@Order(11)
class BondCalculator implements Calculator {
    private static final String PEEL = "adhesive.peelNPerCm";
    private static final String SHEAR = "adhesive.shearKPa";
    private static final String TENSILE = "adhesive.tensileKPa";

    @Override
    public String name() {
        return "bond";
    }

    @Override
    public String title() {
        return "Bond";
    }

    @Override
    public String about() {
        return "What the air, or a knock, asks of the tape under one base, beside what the tape bears by its data sheet. A"
                + " margin is a ratio and no approval.";
    }

    @Override
    public List<Field> fields() {
        return List.of(
                Field.number("baseLengthMm", "Base, length", "mm", "Along the vane."),
                Field.number("baseWidthMm", "Base, width", "mm", null),
                Field.number("vaneHeightMm", "Vane, height", "mm", null),
                Field.number("vaneLengthMm", "Vane, length", "mm", null),
                Field.number("tapeThicknessMm", "Tape, thickness", "mm", null),
                Field.number(
                        "normalForceCoefficient",
                        "Normal force coefficient",
                        null,
                        "About 0.5 at 15°, 2 square to the air."),
                Field.number("equivalentAirspeedKt", "Equivalent airspeed", "kt", "Empty where the force is given."),
                Field.number(
                        "sideForceN", "Side force", "N", "A knock, in place of the air. 10 N is a kilogram's weight."),
                Field.number(
                        "forceHeightMm",
                        "Height of the force",
                        "mm",
                        "Above the underside of the base. Half the vane where empty."),
                Field.number(PEEL, "Peel or cleavage strength", null, null),
                Field.choice(
                        Field.Kind.SELECT,
                        "peelUnit",
                        "Its unit",
                        Option.of(LineLoadUnit.values(), LineLoadUnit::symbol)),
                Field.number(SHEAR, "Shear strength", null, null),
                Field.number(TENSILE, "Tensile strength", null, null),
                Field.choice(
                        Field.Kind.SELECT,
                        "stressUnit",
                        "Unit of both",
                        Option.of(StressUnit.values(), StressUnit::symbol)),
                Field.number(
                        "baseThicknessMm", "Base, thickness", "mm", "To see whether the base bends. May stay empty."),
                Field.number("baseModulusMPa", "Base, Young’s modulus", "MPa", "About 2000 for ABS (from memory)."),
                Field.number(
                        "tapeModulusKPa",
                        "Tape, modulus through its thickness",
                        "kPa",
                        "About 600 for foam (engineering judgement, no source)."));
    }

    @Override
    public Map<String, String> example() {
        return Map.ofEntries(
                Map.entry("baseLengthMm", "25"),
                Map.entry("baseWidthMm", "12"),
                Map.entry("vaneHeightMm", "10"),
                Map.entry("vaneLengthMm", "20"),
                Map.entry("tapeThicknessMm", "1"),
                Map.entry("normalForceCoefficient", "1.2"),
                Map.entry("equivalentAirspeedKt", "117"),
                Map.entry(PEEL, "10"),
                Map.entry("peelUnit", "LBF_PER_IN"),
                Map.entry(SHEAR, "70"),
                Map.entry(TENSILE, "80"),
                Map.entry("stressUnit", "PSI"),
                Map.entry("baseThicknessMm", "1"),
                Map.entry("baseModulusMPa", "2000"),
                Map.entry("tapeModulusKPa", "600"));
    }

    @Override
    public Answer answer(Form form, Units units) {
        LineLoadUnit line = or(form.choice("peelUnit", LineLoadUnit.class), LineLoadUnit.N_PER_CM);
        StressUnit stress = or(form.choice("stressUnit", StressUnit.class), StressUnit.KPA);
        Double peel = form.number(PEEL);
        Double shear = form.number(SHEAR);
        Double tensile = form.number(TENSILE);
        BondRequest request = new BondRequest(
                form.number("baseLengthMm"),
                form.number("baseWidthMm"),
                form.number("vaneHeightMm"),
                form.number("vaneLengthMm"),
                form.number("tapeThicknessMm"),
                form.number("normalForceCoefficient"),
                form.number("equivalentAirspeedKt"),
                form.number("sideForceN"),
                form.number("forceHeightMm"),
                new BondRequest.Adhesive(
                        peel == null ? null : (Double) line.toNPerCm(peel),
                        shear == null ? null : (Double) stress.toKPa(shear),
                        tensile == null ? null : (Double) stress.toKPa(tensile)));
        BondResult bond = BondCalculation.run(request);
        FlexibleBase flexible = flexible(form, request, bond);
        List<String> validity = new ArrayList<>(bond.validity());
        if (flexible != null && !flexible.isStiff()) {
            validity.add("This base bends: β b is " + fixed(flexible.betaAcross(), 2)
                    + ", and the rigid formula holds up to about 1. The larger figure is the safer one.");
        }
        return new Answer(
                said(bond), figures(bond, flexible), null, List.of(), null, bond.method(), bond.sources(), validity);
    }

    private static @Nullable FlexibleBase flexible(Form form, BondRequest request, BondResult bond) {
        Double thickness = form.number("baseThicknessMm");
        Double modulus = form.number("baseModulusMPa");
        Double tape = form.number("tapeModulusKPa");
        double tapeThickness = or(request.tapeThicknessMm(), 0.0);
        if (thickness == null || modulus == null || tape == null || tapeThickness == 0) {
            return null;
        }
        Checks checks = new Checks();
        checks.range("baseThicknessMm", thickness, 0.1, 50, "mm");
        checks.range("baseModulusMPa", modulus, 10, 500_000, "MPa");
        checks.range("tapeModulusKPa", tape, 1, 20_000_000, "kPa");
        checks.throwIfAny();
        double across = or(request.baseWidthMm(), 0.0);
        Double given = request.forceHeightMm();
        double height = given == null ? or(request.vaneHeightMm(), 0.0) / 2 : given;
        return FlexibleBase.under(
                new TapedBase(or(request.baseLengthMm(), 0.0), across, tapeThickness),
                new BaseBending(modulus * 1e6, thickness, tape * 1e3, List.of(across / 2)),
                List.of(BondLoad.of(bond.sideForceN(), height)));
    }

    private static String said(BondResult bond) {
        BondResult.Margins m = bond.margins();
        BondMargins margins = new BondMargins(m.shear(), m.tension(), m.cleavage());
        return margins.weakest()
                .map(mode -> String.format(
                        Locale.ROOT,
                        "Weakest: %s (%s). The strength on the data sheet is %s times what is asked.",
                        mode.label(),
                        mode.words(),
                        digits(margins.least().orElse(0.0), 2)))
                .orElse("");
    }

    private static List<Figure> figures(BondResult bond, @Nullable FlexibleBase flexible) {
        List<Figure> figures = new ArrayList<>(List.of(
                new Figure("Side force", digits(bond.sideForceN(), 3, "N")),
                new Figure("Shear stress", digits(bond.shearStressPa() / 1000, 3, "kPa")),
                new Figure("Peak tension", digits(bond.peakTensionPa() / 1000, 3, "kPa")),
                new Figure("Cleavage line load", digits(bond.cleavageLineLoadNPerCm(), 3, "N/cm")),
                new Figure("Margin in shear", digits(bond.margins().shear(), 2)),
                new Figure("Margin in tension", digits(bond.margins().tension(), 2)),
                new Figure("Margin in cleavage", digits(bond.margins().cleavage(), 2))));
        if (flexible != null) {
            figures.add(new Figure("β b of the base", fixed(flexible.betaAcross(), 2)));
            figures.add(new Figure(
                    "Peak tension, base bending", digits(flexible.stress().peakTensionPa() / 1000, 3, "kPa")));
            figures.add(new Figure(
                    "Cleavage line load, base bending", digits(flexible.stress().cleavageNPerCm(), 3, "N/cm")));
        }
        return figures;
    }

    private static <T> T or(@Nullable T given, T otherwise) {
        return given == null ? otherwise : given;
    }
}
