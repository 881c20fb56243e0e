package org.vanewright.campaign.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.vanewright.campaign.Measure;
import org.vanewright.campaign.reduction.Conclusion;
import org.vanewright.campaign.reduction.ReducedCampaign;
import org.vanewright.campaign.reduction.ReducedConfiguration;
import org.vanewright.campaign.reduction.SpeedCalibration;
import org.vanewright.engineering.flighttest.UncertaintyBudget;
import org.vanewright.engineering.inference.Comparison;
import org.vanewright.engineering.inference.Interval;
import org.vanewright.platform.plot.DrawnPlot;
import org.vanewright.record.RevisionRef;

/**
 * What a campaign shows, written out for its page.
 *
 * @param claims a sentence for each configuration, with the numbers behind it
 * @param configurations means and scatter
 * @param points raw beside reduced; empty where there are more of them than a page bears
 * @param budgets of uncertainty
 * @param runs airspeed calibrations
 * @param plots test points, order of flying, position error
 * @param signs warning and wing drop of stalls
 * @param again how many are needed at the measured scatter; null while there is none
 */
public record ResultView(
        ReducedCampaign reduced,
        List<ClaimLine> claims,
        List<Row> configurations,
        List<PointRow> points,
        List<Budget> budgets,
        List<RunRow> runs,
        List<DrawnPlot> plots,
        List<StallSigns> signs,
        @Nullable String again) {
    /** With more test points than that, their table has a page of its own, and plots are files. */
    private static final int MOST_POINTS = 60;

    /** A sentence with the figures it rests on. */
    public record ClaimLine(
            String configuration, @Nullable String reference, String sentence, boolean seen, List<Figure> figures) {}

    /** A named figure. */
    public record Figure(String name, String figure) {}

    /** A row of the table of configurations. */
    public record Row(String label, int count, String mean, String scatter, String interval) {}

    /** What a figure owes its uncertainty to. */
    public record Budget(String label, String result, List<Contribution> contributions) {}

    /** One cause. */
    public record Contribution(String name, String uncertainty, String share, String how) {}

    /** One airspeed calibration. */
    public record RunRow(
            String indicated, String trueSpeed, String calibrated, String wind, String residual, String legs) {}

    /**
     * @param campaign revision that was reduced; with many test points its plots are files of their own
     * @param idPrefix starts every id within
     */
    static ResultView of(RevisionRef campaign, ReducedCampaign reduced, String idPrefix) {
        Measure measure = reduced.measure();
        boolean large = reduced.points().count() > MOST_POINTS;
        return new ResultView(
                reduced,
                claims(reduced),
                reduced.configurations().stream().map(c -> row(c, measure)).toList(),
                large ? List.of() : PointRow.of(reduced),
                budgets(reduced),
                reduced.calibration().runs().stream().map(ResultView::run).toList(),
                ResultPlots.of(reduced).stream()
                        .map(p -> large ? p.at(campaign) : p.drawn(idPrefix))
                        .toList(),
                StallSigns.of(reduced),
                reduced.power() == null ? null : PlanView.sentence(reduced.power(), measure));
    }

    /** How many test points there are, whether they stand here or not. */
    public long pointCount() {
        return reduced.points().count();
    }

    /** The sentences alone, for a list that draws no plots. */
    static List<ClaimLine> claims(ReducedCampaign reduced) {
        return reduced.conclusions().stream()
                .map(c -> line(c, reduced.measure()))
                .toList();
    }

    private static ClaimLine line(Conclusion conclusion, Measure measure) {
        String label = conclusion.configuration().label();
        if (conclusion.claim() == null || conclusion.comparison() == null) {
            return new ClaimLine(label, null, conclusion.sentence(measure), false, List.of());
        }
        return new ClaimLine(
                label,
                conclusion.configuration().configuration().key(),
                conclusion.sentence(measure),
                conclusion.claim().changeSeen(),
                figures(conclusion, conclusion.comparison(), measure));
    }

    private static List<Figure> figures(Conclusion conclusion, Comparison c, Measure measure) {
        List<Figure> figures = new ArrayList<>();
        String unit = " " + measure.unit();
        figures.add(new Figure("Difference of means", signed(c.difference()) + unit));
        figures.add(new Figure("Its standard error", digits(c.standardError()) + unit));
        figures.add(new Figure("95 % interval", interval(c.interval()) + unit));
        figures.add(new Figure("t", digits(c.t())));
        figures.add(new Figure("Degrees of freedom", digits(c.degreesOfFreedom())));
        figures.add(new Figure("Probability of as much by chance", probability(c.pValue())));
        Double adjusted = conclusion.adjustedPValue();
        if (adjusted != null && adjusted != c.pValue()) {
            figures.add(new Figure("Corrected for several comparisons", probability(adjusted)));
        }
        figures.add(new Figure(
                "Smallest change seen with a chance of 80 %",
                digits(c.smallestVisibleChange(Comparison.USUAL_POWER)) + unit));
        figures.add(new Figure(
                "Test points", c.baselineCount() + " unmodified, " + c.modifiedCount() + " in this configuration"));
        return figures;
    }

    private static Row row(ReducedConfiguration c, Measure measure) {
        String unit = " " + measure.unit();
        return new Row(
                c.label(),
                c.points().size(),
                c.mean() == null ? "–" : digits(c.mean()) + unit,
                c.standardDeviation() == null ? "–" : digits(c.standardDeviation()) + unit,
                c.interval() == null ? "–" : interval(c.interval()) + unit);
    }

    private static List<Budget> budgets(ReducedCampaign reduced) {
        List<Budget> budgets = new ArrayList<>();
        for (ReducedConfiguration each : reduced.configurations()) {
            UncertaintyBudget budget = each.budget();
            if (budget == null) {
                continue;
            }
            List<Contribution> contributions = budget.contributions().stream()
                    .map(c -> new Contribution(
                            c.name(),
                            digits(c.standardUncertainty()) + " " + budget.unit(),
                            String.format(Locale.ROOT, "%.0f %%", 100 * budget.share(c)),
                            c.how()))
                    .toList();
            budgets.add(new Budget(
                    each.label(),
                    digits(budget.value()) + " " + budget.unit() + ", combined standard uncertainty "
                            + digits(budget.combined()) + " " + budget.unit() + ", 95 % interval "
                            + interval(budget.interval(0.95)) + " " + budget.unit(),
                    contributions));
        }
        return List.copyOf(budgets);
    }

    private static RunRow run(SpeedCalibration.Run run) {
        Double residual = run.legs().residualKt();
        return new RunRow(
                digits(run.run().indicatedKt()) + " kt",
                digits(run.legs().trueAirspeedKt()) + " kt",
                digits(run.run().calibratedKt()) + " kt",
                String.format(
                        Locale.ROOT,
                        "%.0f kt from %.0f°",
                        run.legs().windSpeedKt(),
                        run.legs().windFromDeg()),
                residual == null ? "three legs leave none" : String.format(Locale.ROOT, "%.1f kt", residual),
                PointWords.legs(run.point().legs()));
    }

    static String interval(Interval interval) {
        return signed(interval.low()) + " to " + signed(interval.high());
    }

    static String signed(double value) {
        return digits(value).replace('-', '−');
    }

    /** Three figures of what is below a hundred, else whole numbers with a decimal. */
    static String digits(double value) {
        double size = Math.abs(value);
        int decimals = size < 10 ? 2 : size < 1000 ? 1 : 0;
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }

    private static String probability(double p) {
        return p < 0.001 ? "below 0.001" : String.format(Locale.ROOT, "%.3f", p);
    }
}
