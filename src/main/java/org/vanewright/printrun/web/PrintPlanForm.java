package org.vanewright.printrun.web;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.vanewright.device.PrintMaterial;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.printing.PrintRate;
import org.vanewright.engineering.printing.PrintSettings;
import org.vanewright.engineering.printing.Spares;
import org.vanewright.engineering.printing.SunlitSkin;
import org.vanewright.platform.form.Form;
import org.vanewright.printrun.PrintPlanQuery;

/**
 * What the address of a print plan asks for.
 *
 * @param form every parameter as typed, defaults filled in, with what cannot be used
 * @param query null where something cannot be used
 * @param sun null where something cannot be used
 */
record PrintPlanForm(
        Form form, @Nullable PrintPlanQuery query, @Nullable SunlitSkin sun) {
    private static final double BED_MM = 220;
    private static final double SPACING_MM = 4;
    private static final int SPARES = 2;
    private static final double MINUTES_PER_PLATE = 10;

    /** Reads the fields; those that were left out take a usual value. */
    static PrintPlanForm of(Form form) {
        fill(form);
        SunlitSkin sun = SunForm.read(SunForm.fill(form));
        PrintPlanQuery query = form.hasProblems() ? null : query(form);
        return new PrintPlanForm(form, query, sun);
    }

    private static void fill(Form form) {
        PrintSettings usual = PrintSettings.USUAL;
        form.ifEmpty("spares", SPARES)
                .ifEmpty("sparesPercent", 0)
                .ifEmpty("bedWidthMm", BED_MM)
                .ifEmpty("bedDepthMm", BED_MM)
                .ifEmpty("spacingMm", SPACING_MM)
                .ifEmpty("material", PrintMaterial.ABS.name())
                .ifEmpty("shellMm", usual.shellMm())
                .ifEmpty("infillPercent", 100 * usual.infillFraction())
                .ifEmpty("raftMm", usual.raftMm())
                .ifEmpty("raftMarginMm", usual.raftMarginMm())
                .ifEmpty("rateKind", PrintRate.USUAL.kind().name())
                .ifEmpty("rate", PrintRate.USUAL.value())
                .ifEmpty("minutesPerPlate", MINUTES_PER_PLATE);
    }

    private static @Nullable PrintPlanQuery query(Form form) {
        PrintMaterial material = form.choice("material", PrintMaterial.class);
        PrintRate.Kind kind = form.choice("rateKind", PrintRate.Kind.class);
        Integer spares = form.integer("spares");
        Double watts = form.number("watts");
        Checks checks = new Checks();
        checks.require(spares != null, "spares", form.value("spares"), "a whole number from 0 to 200");
        double bedWidth = ranged(form, checks, "bedWidthMm", 50, 1000, "mm");
        double bedDepth = ranged(form, checks, "bedDepthMm", 50, 1000, "mm");
        double spacing = ranged(form, checks, "spacingMm", 1, 50, "mm");
        double perPlate = ranged(form, checks, "minutesPerPlate", 0, 600, "minutes");
        double infill = ranged(form, checks, "infillPercent", 0, 100, "%");
        checks.optionalRange("watts", watts, 1, 5000, "W");
        double[] typed = {
            number(form, "sparesPercent"), number(form, "shellMm"), number(form, "raftMm"), number(form, "raftMarginMm"),
            number(form, "rate")
        };
        form.refuse(checks.problems());
        if (form.hasProblems() || material == null || kind == null || spares == null) {
            return null;
        }
        try {
            return new PrintPlanQuery(
                    new Spares(spares, typed[0]),
                    form.checked("shaped"),
                    new PrintPlanQuery.Bed(bedWidth, bedDepth, spacing),
                    material,
                    new PrintSettings(typed[1], infill / 100, typed[2], typed[3], material.usualKgM3()),
                    new PrintRate(kind, typed[4]),
                    perPlate,
                    watts);
        } catch (InvalidInputException e) {
            form.refuse(e.problems());
            return null;
        }
    }

    private static double ranged(Form form, Checks checks, String field, double low, double high, String unit) {
        double typed = number(form, field);
        checks.range(field, typed, low, high, unit);
        return typed;
    }

    private static double number(Form form, String field) {
        Double typed = form.number(field);
        return typed == null ? Double.NaN : typed;
    }

    /** The part of an address that sets a rate, such as one read off a run. */
    static String rateValue(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }
}
