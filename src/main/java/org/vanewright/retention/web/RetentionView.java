package org.vanewright.retention.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.inference.Interval;
import org.vanewright.engineering.inference.survival.KaplanMeier;
import org.vanewright.engineering.inference.survival.LifeTable;
import org.vanewright.engineering.inference.survival.Lifetime;
import org.vanewright.engineering.inference.survival.LogRank;
import org.vanewright.inspection.InspectionDocument;
import org.vanewright.inspection.LossCause;
import org.vanewright.installation.InstallationDocument;
import org.vanewright.platform.page.Numbers;
import org.vanewright.platform.plot.DrawnPlot;
import org.vanewright.record.Revision;
import org.vanewright.retention.GroupStudy;
import org.vanewright.retention.RetentionStudy;
import org.vanewright.retention.RetentionWords;
import org.vanewright.retention.WatchedDevice;
import org.vanewright.retention.WatchedInstallation;

/**
 * A study as its page shows it.
 *
 * @param groups one after another
 * @param together all curves; null without any group
 * @param hours heads of the table of numbers at risk
 * @param atRisk numbers at risk of each group just before those hours
 * @param compared what the log-rank test says; null where nothing is compared
 */
public record RetentionView(
        List<Group> groups,
        @Nullable DrawnPlot together,
        List<String> hours,
        List<AtRisk> atRisk,
        @Nullable String compared) {
    private static final double CLEAR = 0.05;
    private static final String NONE = "–";

    /** A page elsewhere. */
    public record Link(String words, String path) {}

    /** Numbers at risk of one group. */
    public record AtRisk(String group, List<Integer> counts) {}

    /** A time at which losses were found, with what was lost and where that stands. */
    public record StepLine(
            String hours,
            int atRisk,
            int lost,
            List<Link> losses,
            String left,
            String error,
            String devices,
            String installations) {}

    /** Hours between which a share was lost. */
    public record PlaceLine(String between, String share, String left, String devices, String installations) {}

    /** A row of the life table. */
    public record LifeLine(String hours, int entered, int withdrawn, int lost, String conditional, String left) {}

    /** An installation with its inspections. */
    public record Basis(Link installation, boolean invented, int devices, String hours, List<Link> inspections) {}

    /** One group. */
    public record Group(
            String name,
            String id,
            String sentence,
            String look,
            String median,
            String causes,
            DrawnPlot plot,
            List<StepLine> steps,
            List<PlaceLine> places,
            List<LifeLine> table,
            List<Basis> basis) {}

    static RetentionView of(RetentionStudy study) {
        List<Group> groups = new ArrayList<>();
        for (int i = 0; i < study.groups().size(); i++) {
            groups.add(group(study.groups().get(i), i + 1));
        }
        List<Double> hours = study.groups().stream()
                .map(g ->
                        g.table().rows().stream().map(LifeTable.Row::fromHours).toList())
                .reduce((a, b) -> a.get(a.size() - 1) >= b.get(b.size() - 1) ? a : b)
                .orElse(List.of());
        return new RetentionView(
                groups,
                groups.isEmpty() ? null : RetentionPlots.together(study.groups()),
                hours.stream().map(RetentionWords::hours).toList(),
                study.groups().stream().map(g -> atRisk(g, hours)).toList(),
                compared(study.logRank()));
    }

    private static AtRisk atRisk(GroupStudy group, List<Double> hours) {
        List<Lifetime> lifetimes = group.installations().stream()
                .flatMap(i -> i.devices().stream())
                .map(d -> d.span().asFound())
                .toList();
        return new AtRisk(
                group.name(),
                hours.stream().map(h -> KaplanMeier.atRisk(lifetimes, h)).toList());
    }

    private static @Nullable String compared(@Nullable LogRank test) {
        if (test == null) {
            return null;
        }
        return String.format(
                Locale.ROOT,
                "Log-rank test: χ² %.2f with %d %s of freedom, p %s. %s",
                test.chiSquared(),
                test.degreesOfFreedom(),
                test.degreesOfFreedom() == 1 ? "degree" : "degrees",
                test.pValue() < 0.0001 ? "below 0.0001" : String.format(Locale.ROOT, "%.2g", test.pValue()),
                test.pValue() < CLEAR
                        ? "The groups lose at different rates, if each device has a fate of its own."
                        : "No difference is shown; that does not show that there is none.");
    }

    private static Group group(GroupStudy g, int number) {
        Double median = g.foundCurve().medianHours();
        return new Group(
                g.name(),
                "group-" + number,
                g.sentence(),
                RetentionWords.look(g),
                median == null
                        ? "not reached"
                        : RetentionWords.hours(median) + " h"
                                + limits(g.foundCurve().medianInterval()),
                causes(g.causes()),
                RetentionPlots.alone(g, "plot-" + number),
                g.steps().stream().map(RetentionView::step).toList(),
                g.places().stream().map(RetentionView::place).toList(),
                g.table().rows().stream().map(RetentionView::life).toList(),
                g.installations().stream().map(RetentionView::basis).toList());
    }

    private static String limits(KaplanMeier.MedianInterval interval) {
        Double low = interval.low();
        Double high = interval.high();
        return " (95 % " + (low == null ? "from no known hour" : RetentionWords.hours(low)) + " to "
                + (high == null ? "no known hour" : RetentionWords.hours(high)) + ", each device by itself)";
    }

    private static String causes(Map<LossCause, Long> causes) {
        List<String> words = new ArrayList<>();
        causes.forEach((cause, count) -> words.add(cause.label().toLowerCase(Locale.ROOT) + " " + count));
        return words.isEmpty() ? "nothing lost" : String.join(", ", words);
    }

    private static StepLine step(GroupStudy.Step s) {
        KaplanMeier.Step step = s.step();
        return new StepLine(
                RetentionWords.hours(step.hours()),
                step.atRisk(),
                step.lost(),
                s.losses().stream().map(RetentionView::loss).toList(),
                Numbers.fixed(step.survival(), 3),
                Numbers.fixed(step.standardError(), 3),
                range(step.low(), step.high()),
                range(s.shared()));
    }

    private static Link loss(WatchedDevice device) {
        Revision<InspectionDocument> found = device.found();
        String state = device.loss() == null || device.loss().state() == null
                ? ""
                : " " + device.loss().state().label().toLowerCase(Locale.ROOT);
        return found == null
                ? new Link(device.at().words(), "/inspections")
                : new Link(device.at().words() + state + ", " + found.content().name(), path("inspections", found));
    }

    private static PlaceLine place(GroupStudy.Place p) {
        return new PlaceLine(
                RetentionWords.hours(p.afterHours()) + " to " + RetentionWords.hours(p.byHours()),
                Numbers.fixed(p.share(), 3),
                Numbers.fixed(p.left(), 3),
                range(p.devices()),
                range(p.installations()));
    }

    private static LifeLine life(LifeTable.Row r) {
        return new LifeLine(
                RetentionWords.hours(r.fromHours()) + " to " + RetentionWords.hours(r.toHours()),
                r.entered(),
                r.withdrawn(),
                r.lost(),
                Numbers.fixed(r.conditional(), 3),
                Numbers.fixed(r.survival(), 3));
    }

    private static Basis basis(WatchedInstallation i) {
        Revision<InstallationDocument> revision = i.revision();
        return new Basis(
                new Link(revision.content().name(), path("installations", revision)),
                revision.content().invented(),
                i.devices().size(),
                RetentionWords.hours(i.hoursFlown()),
                i.inspections().stream()
                        .map(r -> new Link(inspected(r.content()), path("inspections", r)))
                        .toList());
    }

    private static String inspected(InspectionDocument inspection) {
        Double hours = inspection.hoursFlown();
        int lost = inspection.losses().size();
        return inspection.inspectedOn() + ", " + RetentionWords.hours(hours == null ? 0 : hours) + " h: "
                + (lost == 0 ? "all in place" : lost + " missing or loose");
    }

    private static String path(String plural, Revision<?> revision) {
        return "/" + plural + "/" + revision.slug() + "/revisions/" + revision.number();
    }

    private static String range(@Nullable Interval interval) {
        return interval == null ? NONE : range(interval.low(), interval.high());
    }

    private static String range(double low, double high) {
        return Numbers.fixed(low, 3) + " to " + Numbers.fixed(high, 3);
    }
}
