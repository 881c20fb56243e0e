package org.vanewright.engineering.section;

import java.util.Locale;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;

/** Reads a four- or five-digit NACA number into its mean line and thickness. */
final class NacaNumber {
    static final String FIELD = "naca";
    private static final Pattern WRITTEN = Pattern.compile("(?:NACA[ -]?)?([0-9]{4,5})");
    private static final double LARGEST_THICKNESS = 0.40;
    /** r, k1 of the simple lines 210 to 250; rows by second digit. */
    private static final double[][] SIMPLE = {
        {0.0580, 361.4}, {0.1260, 51.64}, {0.2025, 15.957}, {0.2900, 6.643}, {0.3910, 3.230}
    };
    /** r, k1, k2/k1 of the reflexed lines 221 to 251; rows by second digit less one. */
    private static final double[][] REFLEXED = {
        {0.1300, 51.990, 0.000764}, {0.2170, 15.793, 0.00677}, {0.3180, 6.520, 0.0303}, {0.4410, 3.191, 0.1355}
    };

    private NacaNumber() {}

    static Section section(String written, SectionSpec.@Nullable TrailingEdge edge) {
        String digits = digits(written);
        SectionSpec.TrailingEdge trailing = edge == null ? SectionSpec.TrailingEdge.BLUNT : edge;
        MeanLine meanLine = digits.length() == 4 ? fourDigit(digits) : fiveDigit(digits);
        ThicknessForm thickness = thickness(digits, trailing);
        NacaCurve upper = new NacaCurve(meanLine, thickness, SurfaceSide.UPPER);
        if (!upper.regular()) {
            throw refused(digits, "a section thin enough for its camber; this one's skin would fold over itself");
        }
        NacaCurve lower = new NacaCurve(meanLine, thickness, SurfaceSide.LOWER);
        boolean closed = trailing == SectionSpec.TrailingEdge.CLOSED;
        return new CurveSection(
                new SectionSpec(digits, trailing, null, null),
                "NACA " + digits + (closed ? " (closed trailing edge)" : ""),
                new SkinSide(SurfaceSide.UPPER, upper),
                new SkinSide(SurfaceSide.LOWER, lower),
                new SectionExtremes(thickness.maximum(), meanLine.maximumHeight()),
                thickness.noseRadius());
    }

    private static String digits(String written) {
        var matcher = WRITTEN.matcher(written.strip().toUpperCase(Locale.ROOT));
        if (!matcher.matches()) {
            throw refused(written, "four or five digits such as 2412 or 23012");
        }
        return matcher.group(1);
    }

    private static ThicknessForm thickness(String digits, SectionSpec.TrailingEdge edge) {
        double ratio = Integer.parseInt(digits.substring(digits.length() - 2)) / 100.0;
        if (ratio < 0.01 || ratio > LARGEST_THICKNESS) {
            throw refused(digits, "last two digits, the thickness in percent, from 01 to 40");
        }
        return ThicknessForm.of(ratio, edge);
    }

    private static MeanLine fourDigit(String digits) {
        int camber = digits.charAt(0) - '0';
        int position = digits.charAt(1) - '0';
        if (camber == 0 && position == 0) {
            return FourDigitMeanLine.STRAIGHT;
        }
        if (camber == 0 || position == 0) {
            throw refused(digits, "camber and its position both zero (as in 0012) or both 1 to 9 (as in 2412)");
        }
        return new FourDigitMeanLine(camber / 100.0, position / 10.0);
    }

    private static MeanLine fiveDigit(String digits) {
        int lift = digits.charAt(0) - '0';
        int position = digits.charAt(1) - '0';
        int reflex = digits.charAt(2) - '0';
        boolean known = lift >= 1 && lift <= 6 && position <= 5 && reflex <= 1 && position >= 1 + reflex;
        if (!known) {
            throw refused(
                    digits,
                    "five digits with the first 1 to 6 and then 10, 20, 30, 40, 50 (simple mean line)"
                            + " or 21, 31, 41, 51 (reflexed)");
        }
        double[] line = reflex == 0 ? SIMPLE[position - 1] : REFLEXED[position - 2];
        double k1 = line[1] * lift / 2.0;
        return new FiveDigitMeanLine(k1, line[0], reflex == 0 ? 0 : line[2]);
    }

    private static InvalidInputException refused(String written, String allowed) {
        String shown = written.length() <= 40 ? written : written.substring(0, 39) + "…";
        return new InvalidInputException(new FieldProblem(FIELD, shown, allowed));
    }
}
