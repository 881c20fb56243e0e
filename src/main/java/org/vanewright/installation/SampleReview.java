package org.vanewright.installation;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;
import org.hipparchus.stat.StatUtils;
import org.jspecify.annotations.Nullable;

/**
 * Measured devices beside their nominal figures.
 *
 * @param rows one for each sample
 * @param position of all deviations along the skin, mm
 * @param angle of all deviations of angle, degrees
 * @param height of all deviations of height, mm
 */
public record SampleReview(List<Row> rows, Spread position, Spread angle, Spread height) {
    /**
     * A figure that was measured.
     *
     * @param measured as read
     * @param nominal by the layout or the device
     * @param off measured less nominal
     * @param flagged whether it is off by more than the tolerance
     */
    public record Compared(double measured, double nominal, double off, boolean flagged) {}

    /**
     * One device.
     *
     * @param device which one
     * @param position centre of its base along the skin, mm
     * @param angle of its vane, degrees, toe-in positive
     * @param height of its vane above its base, mm
     */
    public record Row(
            FittedDevice device,
            @Nullable Compared position,
            @Nullable Compared angle,
            @Nullable Compared height) {
        public boolean flagged() {
            return Stream.of(position, angle, height).filter(Objects::nonNull).anyMatch(c -> c != null && c.flagged());
        }
    }

    /**
     * Deviations together.
     *
     * @param count how many
     * @param mean of them; null for none
     * @param standardDeviation with n − 1; null for fewer than two
     */
    public record Spread(
            int count, @Nullable Double mean, @Nullable Double standardDeviation) {}

    /** Samples of devices that the layout has; others are left out. */
    public static SampleReview of(InstallationDocument installation, Fitting fitting) {
        TolerancesDocument t = installation.tolerances();
        List<Row> rows = new ArrayList<>();
        for (SampleDocument sample : installation.samples()) {
            if (sample.at() != null) {
                fitting.find(sample.at()).ifPresent(d -> rows.add(row(sample, d, t)));
            }
        }
        return new SampleReview(
                List.copyOf(rows), spread(rows, Row::position), spread(rows, Row::angle), spread(rows, Row::height));
    }

    private static Row row(SampleDocument sample, FittedDevice device, TolerancesDocument t) {
        return new Row(
                device,
                compared(sample.chordPositionMm(), device.station().arcFromLeadingEdgeMm(), t.positionOrUsualMm()),
                compared(sample.angleDeg(), device.station().angleDeg(), t.angleOrUsualDeg()),
                compared(sample.heightMm(), device.nominalHeightMm(), t.heightOrUsualMm()));
    }

    private static @Nullable Compared compared(@Nullable Double measured, @Nullable Double nominal, double tolerance) {
        if (measured == null || nominal == null) {
            return null;
        }
        double off = measured - nominal;
        return new Compared(measured, nominal, off, Math.abs(off) > tolerance + 1e-9);
    }

    private static Spread spread(List<Row> rows, Function<Row, @Nullable Compared> figure) {
        double[] off = rows.stream()
                .map(figure)
                .filter(Objects::nonNull)
                .mapToDouble(c -> c == null ? 0 : c.off())
                .toArray();
        return new Spread(
                off.length,
                off.length == 0 ? null : (Double) StatUtils.mean(off),
                off.length < 2 ? null : (Double) Math.sqrt(StatUtils.variance(off)));
    }

    /** How many devices are off by more than a tolerance. */
    public long flagged() {
        return rows.stream().filter(Row::flagged).count();
    }
}
