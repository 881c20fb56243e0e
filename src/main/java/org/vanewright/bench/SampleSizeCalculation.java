package org.vanewright.bench;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.inference.SampleSize;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;

/** How many repeats show a change between two groups. */
public final class SampleSizeCalculation {
    /** How the figures come about. */
    public static final String METHOD =
            "The least n of each configuration at which a two-sided t test of independent values sees the difference with the"
                    + " power asked for, by the non-central t distribution with 2 n − 2 degrees of freedom; approximately"
                    + " n = 2 (z₁₋α/₂ + z_power)² (σ/Δ)² by the normal distribution.";

    public static final List<String> SOURCES = List.of(
            "J. Cohen, Statistical Power Analysis for the Behavioral Sciences, 2nd edition, 1988 (from memory)",
            "NIST/SEMATECH e-Handbook of Statistical Methods, section 7.2.2.2");

    private static final double USUAL_SIGNIFICANCE = 0.05;
    private static final double USUAL_POWER = 0.8;
    private static final int FEW = 6;

    private SampleSizeCalculation() {}

    /** @throws InvalidInputException naming each field that is missing or out of range */
    public static SampleSizeResult run(SampleSizeRequest request) {
        SampleSize size = size(request, false);
        return new SampleSizeResult(size.perGroup(), size.normalApproximation(), METHOD, SOURCES, validity(size));
    }

    /** As {@link #run}, with what only pages show; {@code paired} takes the scatter as that of differences within pairs. */
    public static SampleSize size(SampleSizeRequest request, boolean paired) {
        Checks checks = new Checks();
        Double deviation = request.standardDeviation();
        Double difference = request.difference();
        checks.present("standardDeviation", deviation, "a number above 0");
        checks.present("difference", difference, "a number other than 0");
        checks.throwIfAny();
        double significance = Objects.requireNonNullElse(request.significance(), USUAL_SIGNIFICANCE);
        double power = Objects.requireNonNullElse(request.power(), USUAL_POWER);
        return paired
                ? SampleSize.pairs(number(deviation), number(difference), significance, power)
                : SampleSize.twoGroups(number(deviation), number(difference), significance, power);
    }

    private static double number(@Nullable Double checked) {
        if (checked == null) {
            throw new IllegalStateException("checked before");
        }
        return checked;
    }

    /** Warnings of a size. */
    public static List<String> validity(SampleSize size) {
        return size.perGroup() < FEW
                ? List.of(String.format(
                        Locale.ROOT,
                        "So few values lean on a guess of the scatter and on its being normal; Welch's test sees the"
                                + " change with a chance of %.2f where %.2f is counted on here.",
                        size.welchPowerAt(size.perGroup()),
                        size.powerAt(size.perGroup())))
                : List.of();
    }
}
