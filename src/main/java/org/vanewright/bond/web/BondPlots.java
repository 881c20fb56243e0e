package org.vanewright.bond.web;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.vanewright.bond.BondCase;
import org.vanewright.bond.BondConditions;
import org.vanewright.bond.LayoutBond;
import org.vanewright.bond.RowBond;
import org.vanewright.engineering.bond.BondMode;
import org.vanewright.platform.plot.Curve;
import org.vanewright.platform.plot.CurvePlot;
import org.vanewright.platform.plot.DrawnPlot;
import org.vanewright.platform.plot.PlotAxis;
import org.vanewright.platform.plot.PlotMark;
import org.vanewright.platform.plot.PlotPoint;

/** How much of each strength the air uses, over speed. */
final class BondPlots {
    private static final int STEPS = 40;

    private BondPlots() {}

    /** Null where no strength is stated. */
    static @Nullable DrawnPlot of(RowBond row, LayoutBond bond) {
        BondConditions conditions = bond.conditions();
        double fastest =
                Math.max(conditions.speedKt(), conditions.neverExceedKt() == null ? 0 : conditions.neverExceedKt());
        List<Curve> curves = new ArrayList<>();
        for (BondMode mode : BondMode.values()) {
            double used = used(row.air(), mode);
            if (used > 0) {
                curves.add(new Curve(
                        mode.label(), points(used, conditions.speedKt(), fastest), Curve.Look.values()[curves.size()]));
            }
        }
        if (curves.isEmpty()) {
            return null;
        }
        String title = "Strength used by the air, row " + (row.index() + 1);
        CurvePlot plot = new CurvePlot(
                title,
                PlotAxis.of("Equivalent airspeed, kt"),
                PlotAxis.of("Share of the strength left, %"),
                curves,
                List.of(new PlotMark("asked", conditions.speedKt(), null)));
        return DrawnPlot.of(plot, "bond-" + row.index(), caption(row));
    }

    private static String caption(RowBond row) {
        double most = Arrays.stream(BondMode.values())
                .mapToDouble(m -> used(row.knock(), m))
                .max()
                .orElse(0);
        return String.format(
                Locale.ROOT,
                "It grows with the square of the speed. The knock, at no speed at all, uses %s %%.",
                BondLooks.digits(most, 2));
    }

    /** In per cent, of the way that uses most; 0 where the strength is not stated. */
    private static double used(BondCase load, BondMode mode) {
        double most = 0;
        for (var way : load.ways()) {
            Double margin = way.margins().of(mode);
            if (margin != null) {
                most = Math.max(most, 100 / margin);
            }
        }
        return most;
    }

    private static List<PlotPoint> points(double usedPercent, double atKt, double fastestKt) {
        List<PlotPoint> points = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double speed = fastestKt * i / STEPS;
            points.add(new PlotPoint(speed, usedPercent * speed * speed / (atKt * atKt)));
        }
        return points;
    }
}
