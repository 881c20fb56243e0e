package org.vanewright.printrun;

import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.inference.Interval;
import org.vanewright.engineering.inference.Sample;

/**
 * What a run shows: how many pieces are fit for use, how fast it went, and how far measured pieces are off.
 *
 * @param usable pieces without a fault
 * @param minutesPerPiece by the clock; absent where no time was taken
 * @param gramsPerPiece material used; absent where none was weighed
 * @param height of the vane against its nominal; absent where no piece was measured
 * @param thickness of the vane against its nominal; absent where no piece was measured
 */
public record RunResult(
        int usable,
        @Nullable Double minutesPerPiece,
        @Nullable Double gramsPerPiece,
        @Nullable Measured height,
        @Nullable Measured thickness) {
    private static final double CONFIDENCE = 0.95;

    /** Readings are decimal: half a hundredth of a millimetre off the bound is a rounding, not a fault. */
    private static final double SAME_MM = 1e-9;

    /**
     * A dimension as measured on a sample.
     *
     * @param count of pieces measured
     * @param nominalMm as designed
     * @param meanMm of the sample
     * @param standardDeviationMm of the sample; absent with one piece
     * @param meanIntervalMm where the mean of all such pieces lies, 95 %, by Student's t; absent with one piece
     * @param outside how many are off by more than the tolerance; absent without one
     */
    public record Measured(
            int count,
            double nominalMm,
            double meanMm,
            @Nullable Double standardDeviationMm,
            @Nullable Interval meanIntervalMm,
            @Nullable Integer outside) {
        /** Mean minus nominal. */
        public double deviationMm() {
            return meanMm - nominalMm;
        }

        private static @Nullable Measured of(
                List<Double> readings, @Nullable Double nominal, @Nullable Double tolerance) {
            if (readings.isEmpty() || nominal == null) {
                return null;
            }
            double[] values =
                    readings.stream().mapToDouble(Double::doubleValue).toArray();
            Integer outside = tolerance == null
                    ? null
                    : (Integer) (int) readings.stream()
                            .filter(r -> Math.abs(r - nominal) > tolerance + SAME_MM)
                            .count();
            if (values.length == 1) {
                return new Measured(1, nominal, values[0], null, null, outside);
            }
            Sample sample = Sample.of(values);
            return new Measured(
                    values.length,
                    nominal,
                    sample.mean(),
                    sample.standardDeviation(),
                    sample.meanInterval(CONFIDENCE),
                    outside);
        }
    }

    /**
     * @param run within the rules
     * @param heightMm nominal, of the device's vane
     * @param thicknessMm nominal
     */
    public static RunResult of(PrintRunDocument run, @Nullable Double heightMm, @Nullable Double thicknessMm) {
        OutcomeDocument outcome = run.outcome();
        int pieces = outcome.pieces() == null ? 0 : outcome.pieces();
        return new RunResult(
                pieces - outcome.faulty(),
                each(outcome.minutes(), pieces),
                each(outcome.materialG(), pieces),
                Measured.of(readings(run, SampleDocument::heightMm), heightMm, outcome.toleranceMm()),
                Measured.of(readings(run, SampleDocument::thicknessMm), thicknessMm, outcome.toleranceMm()));
    }

    private static @Nullable Double each(@Nullable Double total, int pieces) {
        return total == null || pieces == 0 ? null : (Double) (total / pieces);
    }

    private static List<Double> readings(PrintRunDocument run, Function<SampleDocument, @Nullable Double> which) {
        return run.sample().stream()
                .flatMap(s -> Stream.ofNullable(which.apply(s)))
                .filter(Objects::nonNull)
                .toList();
    }
}
