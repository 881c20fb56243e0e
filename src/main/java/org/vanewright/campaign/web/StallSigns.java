package org.vanewright.campaign.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.vanewright.campaign.PointDocument;
import org.vanewright.campaign.reduction.ReducedCampaign;
import org.vanewright.campaign.reduction.ReducedConfiguration;
import org.vanewright.campaign.reduction.ReducedPoint;

/**
 * How a stall announced itself in one configuration, and what the wings did.
 *
 * @param label of the configuration
 * @param warned how many stalls have the speed of their warning
 * @param margin median of the warning above the lowest speed, both indicated, with its range
 * @param dropped how many stalls have their wing drop
 * @param drop median bank with its range
 */
public record StallSigns(String label, int warned, String margin, int dropped, String drop) {
    static List<StallSigns> of(ReducedCampaign reduced) {
        List<StallSigns> signs = new ArrayList<>();
        for (ReducedConfiguration each : reduced.configurations()) {
            double[] margins = figures(each, StallSigns::margin);
            double[] drops = figures(each, PointDocument::wingDropDeg);
            if (margins.length + drops.length > 0) {
                signs.add(new StallSigns(
                        each.label(), margins.length, words(margins, " kt"), drops.length, words(drops, "°")));
            }
        }
        return List.copyOf(signs);
    }

    private interface Figure {
        @Nullable
        Double of(PointDocument point);
    }

    private static double[] figures(ReducedConfiguration configuration, Figure figure) {
        return configuration.points().stream()
                .map(ReducedPoint::raw)
                .flatMap(p -> Stream.ofNullable(figure.of(p)))
                .mapToDouble(Double::doubleValue)
                .sorted()
                .toArray();
    }

    private static @Nullable Double margin(PointDocument point) {
        Double warning = point.warningAirspeedKt();
        return warning == null
                ? null
                : (Double) (warning - Objects.requireNonNull(point.indicatedAirspeedKt(), "the rules ask for it"));
    }

    /** Median and range of sorted figures. */
    private static String words(double[] sorted, String unit) {
        if (sorted.length == 0) {
            return "–";
        }
        int last = sorted.length - 1;
        double median = (sorted[last / 2] + sorted[sorted.length / 2]) / 2;
        return String.format(Locale.ROOT, "%.1f%s (%.1f to %.1f)", median, unit, sorted[0], sorted[last])
                .replace('-', '−');
    }
}
