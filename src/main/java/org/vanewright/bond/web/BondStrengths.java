package org.vanewright.bond.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.adhesive.AdhesiveDocument;
import org.vanewright.adhesive.TestMethod;
import org.vanewright.bond.LayoutBond;
import org.vanewright.engineering.bond.BondMode;

/** The strengths a check compares with, as stated and as left by the knock-downs. */
final class BondStrengths {
    private static final String NONE = "not stated";

    private BondStrengths() {}

    /**
     * One strength.
     *
     * @param mode that it bears
     * @param stated on the data sheet
     * @param left after the knock-downs
     * @param method of its test
     * @param origin how it is known
     */
    public record Line(String mode, String stated, String left, String method, String origin) {}

    static List<Line> of(LayoutBond bond) {
        AdhesiveDocument a = bond.adhesive().content();
        double left = bond.conditions().knockDown().factor();
        boolean cleaved = a.cleavageNPerCm() != null;
        return List.of(
                line(a, BondMode.SHEAR.label(), "shear", a.shearKPa(), "kPa", left, method(a, "shear")),
                line(a, BondMode.TENSION.label(), "tensile", a.tensileKPa(), "kPa", left, method(a, "tensile")),
                cleaved
                        ? line(
                                a,
                                BondMode.CLEAVAGE.label(),
                                "cleavage",
                                a.cleavageNPerCm(),
                                "N/cm",
                                left,
                                method(a, "cleavage"))
                        : line(
                                a,
                                BondMode.CLEAVAGE.label() + ", by peel strength",
                                "peel",
                                a.peelNPerCm(),
                                "N/cm",
                                left,
                                method(a, "peel")));
    }

    private static Line line(
            AdhesiveDocument a,
            String mode,
            String path,
            @Nullable Double strength,
            String unit,
            double left,
            @Nullable TestMethod method) {
        return new Line(
                mode,
                strength == null ? NONE : BondLooks.digits(strength, 3) + " " + unit,
                strength == null ? NONE : BondLooks.digits(strength * left, 2) + " " + unit,
                method == null ? "" : method.label(),
                strength == null ? "" : a.figureOrigins().label(path));
    }

    private static @Nullable TestMethod method(AdhesiveDocument a, String path) {
        return switch (path) {
            case "shear" -> a.shear() == null ? null : a.shear().method();
            case "tensile" -> a.tensile() == null ? null : a.tensile().method();
            case "cleavage" -> a.cleavage() == null ? null : a.cleavage().method();
            default -> a.peel() == null ? null : a.peel().method();
        };
    }
}
