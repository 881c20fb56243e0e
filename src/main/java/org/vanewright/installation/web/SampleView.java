package org.vanewright.installation.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.vanewright.installation.Fitting;
import org.vanewright.installation.InstallationDocument;
import org.vanewright.installation.SampleReview;
import org.vanewright.installation.TolerancesDocument;
import org.vanewright.platform.page.Numbers;

/**
 * Measured devices as a page shows them.
 *
 * @param rows one for each
 * @param spreads mean and spread of each kind of figure
 * @param flagged how many devices are off by more than a tolerance
 * @param tolerance in words
 * @param fitted how many devices were put on in each row
 * @param count of the devices put on
 * @param missed how many of the layout were left off
 */
public record SampleView(
        List<Row> rows,
        List<SpreadLine> spreads,
        long flagged,
        String tolerance,
        Map<String, Long> fitted,
        int count,
        int missed) {
    private static final char SPACE = '\u00a0';

    /** A figure beside its nominal one; {@code off} has its sign. */
    public record Cell(String measured, String nominal, String off, boolean flagged) {}

    /** One device. */
    public record Row(
            String device,
            @Nullable Cell position,
            @Nullable Cell angle,
            @Nullable Cell height) {}

    /** Deviations together. */
    public record SpreadLine(String figure, int count, String mean, String deviation) {}

    static SampleView of(InstallationDocument installation, Fitting fitting) {
        SampleReview review = SampleReview.of(installation, fitting);
        List<Row> rows = review.rows().stream()
                .map(r -> new Row(r.device().words(), cell(r.position(), 1), cell(r.angle(), 1), cell(r.height(), 2)))
                .toList();
        List<SpreadLine> spreads = new ArrayList<>();
        spread(spreads, "Position along the skin", "mm", review.position());
        spread(spreads, "Angle", "°", review.angle());
        spread(spreads, "Height", "mm", review.height());
        TolerancesDocument t = installation.tolerances();
        return new SampleView(
                rows,
                List.copyOf(spreads),
                review.flagged(),
                "±" + Numbers.trimmed(t.positionOrUsualMm(), 2) + SPACE + "mm along the skin, ±"
                        + Numbers.trimmed(t.angleOrUsualDeg(), 2) + "°, ±" + Numbers.trimmed(t.heightOrUsualMm(), 2)
                        + SPACE + "mm of height",
                fitting.byRow(),
                fitting.devices().size(),
                fitting.all().size() - fitting.devices().size());
    }

    private static @Nullable Cell cell(SampleReview.@Nullable Compared c, int decimals) {
        return c == null
                ? null
                : new Cell(
                        Numbers.fixed(c.measured(), decimals),
                        Numbers.fixed(c.nominal(), decimals),
                        signed(c.off(), decimals),
                        c.flagged());
    }

    private static void spread(List<SpreadLine> lines, String figure, String unit, SampleReview.Spread spread) {
        Double mean = spread.mean();
        if (mean != null) {
            Double deviation = spread.standardDeviation();
            lines.add(new SpreadLine(
                    figure,
                    spread.count(),
                    signed(mean, 2) + SPACE + unit,
                    deviation == null ? "–" : Numbers.fixed(deviation, 2) + SPACE + unit));
        }
    }

    private static String signed(double value, int decimals) {
        String text = Numbers.fixed(Math.abs(value), decimals);
        boolean zero = Double.parseDouble(text) == 0;
        return zero ? text : (value < 0 ? "−" : "+") + text;
    }
}
