package org.vanewright.adhesive.web;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.adhesive.AdhesiveDocument;
import org.vanewright.adhesive.AreaStrength;
import org.vanewright.adhesive.Holding;
import org.vanewright.adhesive.LineStrength;
import org.vanewright.adhesive.PackRating;
import org.vanewright.adhesive.Temperatures;
import org.vanewright.adhesive.TestMethod;
import org.vanewright.engineering.bond.LineLoadUnit;
import org.vanewright.engineering.bond.StressUnit;
import org.vanewright.platform.page.Units;

/** The figures of an adhesive in words, for the table of its page. */
final class AdhesiveFigures {
    private static final String NONE = "not stated";

    private final Units units;
    private final List<Row> rows = new ArrayList<>();

    private AdhesiveFigures(Units units) {
        this.units = units;
    }

    /**
     * One line of the table.
     *
     * @param path of the figure in the document
     * @param stated whether there is such a figure
     */
    public record Row(String path, String name, String value, String method, boolean stated) {}

    static List<Row> of(AdhesiveDocument a, Units units) {
        AdhesiveFigures table = new AdhesiveFigures(units);
        table.add("thicknessMm", "Thickness", units.deviceLength(a.thicknessMm()), "", a.thicknessMm() != null);
        table.line("peel", "Peel strength", a.peel());
        table.line("cleavage", "Cleavage strength", a.cleavage());
        table.area("shear", "Shear strength", a.shear());
        table.area("tensile", "Tensile strength", a.tensile());
        table.holding(a.holding());
        Double modulus = a.modulusKPa();
        table.add(
                "modulusKPa",
                "Modulus through the thickness",
                modulus == null ? NONE : digits(modulus) + " kPa",
                "",
                modulus != null);
        table.temperatures("service", "Temperatures in service", a.service());
        table.temperatures("application", "Temperatures at application", a.application());
        Double dwell = a.dwellHours();
        table.add(
                "dwellHours",
                "Dwell until full strength",
                dwell == null ? NONE : digits(dwell) + " h",
                "",
                dwell != null);
        return List.copyOf(table.rows);
    }

    /** One line that says what it is. */
    static String summary(AdhesiveDocument a) {
        StringBuilder words =
                new StringBuilder(a.carrier() == null ? "Adhesive" : a.carrier().label());
        Double thickness = a.thicknessMm();
        if (thickness != null) {
            words.append(", ").append(digits(thickness)).append(" mm");
        }
        Double peel = a.peelNPerCm();
        words.append(peel == null ? ", peel strength not stated" : ", peel " + digits(peel) + " N/cm");
        return words.toString();
    }

    /** What the pack says, as it says it. */
    static @Nullable String pack(@Nullable PackRating pack) {
        if (pack == null) {
            return null;
        }
        String pounds = pack.pounds() == null ? "" : digits(pack.pounds()) + " pounds";
        String words = pack.words() == null ? "" : "“" + pack.words() + "”";
        return pounds.isEmpty() || words.isEmpty() ? pounds + words : pounds + ", " + words;
    }

    private void line(String path, String name, @Nullable LineStrength given) {
        Double strength = given == null ? null : given.strengthNPerCm();
        String value = strength == null
                ? NONE
                : digits(strength) + " N/cm (" + digits(LineLoadUnit.LBF_PER_IN.fromNPerCm(strength)) + " lb/in)";
        add(path, name, value, method(given == null ? null : given.method()), strength != null);
    }

    private void area(String path, String name, @Nullable AreaStrength given) {
        Double strength = given == null ? null : given.strengthKPa();
        String value = strength == null
                ? NONE
                : digits(strength) + " kPa (" + digits(StressUnit.PSI.fromKPa(strength)) + " psi)";
        add(path, name, value, method(given == null ? null : given.method()), strength != null);
    }

    private void holding(@Nullable Holding given) {
        String value = NONE;
        if (given != null && given.hours() != null && given.massG() != null && given.areaMm2() != null) {
            value = digits(given.hours()) + " h with " + digits(given.massG()) + " g on " + digits(given.areaMm2())
                    + " mm²";
        }
        add(
                "holding",
                "Under a hung mass: a time, no strength",
                value,
                method(given == null ? null : given.method()),
                given != null);
    }

    private void temperatures(String path, String name, @Nullable Temperatures range) {
        String value = range == null
                ? NONE
                : units.temperature(range.lowestC()) + " to " + units.temperature(range.highestC());
        add(path, name, value, "", range != null);
    }

    private static String method(@Nullable TestMethod method) {
        return method == null ? "" : method.label();
    }

    private void add(String path, String name, String value, String method, boolean stated) {
        rows.add(new Row(path, name, value, method, stated));
    }

    /** Three significant digits, which is more than such figures deserve. */
    static String digits(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(3, RoundingMode.HALF_UP));
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
