package org.vanewright.campaign.web;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.vanewright.campaign.reduction.ReducedCampaign;
import org.vanewright.campaign.reduction.ReducedConfiguration;
import org.vanewright.campaign.reduction.ReducedPoint;

/** A row of the table of test points. */
public record PointRow(
        int number,
        String configuration,
        String raw,
        String calibrated,
        String mass,
        String value,
        String compared,
        String lift,
        String remarks) {

    /** All of them, in the order of flying. */
    static List<PointRow> of(ReducedCampaign reduced) {
        String unit = " " + reduced.measure().unit();
        List<PointRow> rows = new ArrayList<>();
        for (ReducedConfiguration each : reduced.configurations()) {
            for (ReducedPoint p : each.points()) {
                List<String> remarks = new ArrayList<>(p.remarks());
                if (p.outlier()) {
                    remarks.add("apart from the others");
                }
                rows.add(new PointRow(
                        p.number(),
                        String.valueOf(each.configuration().key()),
                        PointWords.line(p.raw()),
                        ResultView.digits(p.calibratedKt()) + " kt",
                        ResultView.digits(p.massKg()) + " kg",
                        ResultView.digits(p.value()) + unit,
                        ResultView.digits(p.compared()) + unit,
                        p.liftCoefficient() == null ? "–" : String.format(Locale.ROOT, "%.2f", p.liftCoefficient()),
                        String.join("; ", remarks)));
            }
        }
        rows.sort(Comparator.comparingInt(PointRow::number));
        return List.copyOf(rows);
    }
}
