package org.vanewright.evidence.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.inference.Rounding;
import org.vanewright.evidence.EvidenceStudy;
import org.vanewright.evidence.EvidenceStudy.Group;
import org.vanewright.evidence.EvidenceStudy.Item;
import org.vanewright.evidence.Finding;
import org.vanewright.evidence.Scale;
import org.vanewright.platform.form.Option;
import org.vanewright.platform.page.Numbers;
import org.vanewright.platform.plot.DrawnPlot;

/**
 * A study written out.
 *
 * @param rows of the table, at most {@value #MOST_ROWS}
 * @param more how many comparisons are left out of it
 * @param plots of all comparisons
 * @param funnel of those that are summed up; null without a summary
 * @param groups to choose from
 * @param reasons why others are not counted, with how many each keeps out
 */
public record EvidenceView(
        List<Row> rows,
        int more,
        List<DrawnPlot> plots,
        @Nullable DrawnPlot funnel,
        List<Option> groups,
        Map<String, Integer> reasons) {
    static final int MOST_ROWS = 100;

    /** A comparison, written out. */
    public record Row(
            String campaign,
            String path,
            String aircraft,
            String basis,
            String configuration,
            String layoutPath,
            String counts,
            String change,
            String chord,
            String height,
            String setting,
            String counted,
            boolean invented) {}

    static EvidenceView of(EvidenceStudy study) {
        EvidencePlots plots = new EvidencePlots(study);
        List<Row> rows = study.items().stream()
                .limit(MOST_ROWS)
                .map(i -> row(i, study.query().scale()))
                .toList();
        return new EvidenceView(
                rows,
                study.items().size() - rows.size(),
                plots.all(),
                study.summary() == null ? null : plots.funnel(study.summary()),
                study.groups().stream().map(EvidenceView::option).toList(),
                reasons(study));
    }

    private static Option option(Group group) {
        return new Option(
                group.alike().key(),
                group.alike().words() + " – " + group.campaigns()
                        + (group.campaigns() == 1 ? " campaign" : " campaigns"));
    }

    private static Map<String, Integer> reasons(EvidenceStudy study) {
        Map<String, Integer> reasons = new LinkedHashMap<>();
        study.items().stream().flatMap(i -> i.why().stream()).forEach(why -> reasons.merge(why, 1, Integer::sum));
        List<Map.Entry<String, Integer>> sorted = new ArrayList<>(reasons.entrySet());
        sorted.sort(Map.Entry.<String, Integer>comparingByValue().reversed());
        Map<String, Integer> first = new LinkedHashMap<>();
        sorted.stream().limit(MOST_REASONS).forEach(e -> first.put(e.getKey(), e.getValue()));
        return first;
    }

    private static final int MOST_REASONS = 12;

    private static Row row(Item item, Scale scale) {
        Finding f = item.finding();
        Double chord = f.chordFraction();
        Double height = f.heightOverThickness();
        return new Row(
                f.campaignName(),
                f.path(),
                f.airframeName(),
                f.operatingBasis() == null
                        ? "class not stated"
                        : f.operatingBasis().label(),
                f.configurationKey() + ": " + f.configurationName(),
                "/layouts/" + f.layout().slug() + "/revisions/" + f.layout().revision(),
                f.baselineCount() + " and " + f.modifiedCount(),
                change(item.change(), scale.unit(f.quantity())),
                chord == null ? "–" : Numbers.trimmed(100 * chord, 1) + " %",
                height == null ? "–" : Numbers.fixed(height, 2),
                item.alike().words(),
                item.counted() ? "counted" : String.join("; ", item.why()),
                f.invented());
    }

    private static String change(Scale.@Nullable Change change, String unit) {
        if (change == null) {
            return "–";
        }
        int places = Rounding.decimals(change.interval().halfWidth());
        return signed(change.value(), places) + " " + unit + " ("
                + signed(change.interval().low(), places) + " to "
                + signed(change.interval().high(), places) + ")";
    }

    private static String signed(double value, int places) {
        String text = Rounding.text(value, places);
        return value > 0 && !text.matches("[0.]+") ? "+" + text : text;
    }
}
