package org.vanewright.retention;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.inference.Interval;
import org.vanewright.engineering.inference.survival.Binomial;
import org.vanewright.engineering.inference.survival.Bootstrap;
import org.vanewright.engineering.inference.survival.Installed;
import org.vanewright.engineering.inference.survival.KaplanMeier;
import org.vanewright.engineering.inference.survival.LifeTable;
import org.vanewright.engineering.inference.survival.Lifetime;
import org.vanewright.engineering.inference.survival.LookInterval;
import org.vanewright.engineering.inference.survival.SharedFate;
import org.vanewright.engineering.inference.survival.Span;
import org.vanewright.engineering.inference.survival.Turnbull;
import org.vanewright.inspection.LossCause;
import org.vanewright.inspection.LossDocument;

/** Works out what is known of one group. */
final class GroupStudies {
    private static final double CONFIDENCE = RetentionStudy.CONFIDENCE;
    private static final double[] WIDTHS = {1, 2, 5, 10, 20, 25, 50, 100, 200, 250, 500, 1_000, 2_500};
    private static final int MOST_ROWS = 10;

    /** On average, between two close looks: engineering judgement, no source. */
    private static final double ACCEPTED_LOSSES = 1;

    private GroupStudies() {}

    /** @param installations with the group's devices, at least one in each */
    static GroupStudy of(String name, List<WatchedInstallation> installations) {
        List<List<Lifetime>> found = new ArrayList<>();
        List<Installed> installed = new ArrayList<>();
        for (WatchedInstallation each : installations) {
            List<Span> spans = each.devices().stream().map(WatchedDevice::span).toList();
            installed.add(new Installed(spans));
            found.add(spans.stream().map(Span::asFound).toList());
        }
        List<Span> spans = installed.stream().flatMap(i -> i.spans().stream()).toList();
        List<Lifetime> lifetimes = found.stream().flatMap(List::stream).toList();
        KaplanMeier curve = KaplanMeier.of(lifetimes, CONFIDENCE);
        Turnbull turnbull = Turnbull.of(spans);
        List<GroupStudy.Step> steps = steps(curve, found, installations);
        int lost = (int) spans.stream().filter(Span::lost).count();
        GroupStudy.Look look = look(curve, steps, installations, lost);
        return new GroupStudy(
                name,
                List.copyOf(installations),
                spans.size(),
                lost,
                curve,
                steps,
                turnbull,
                places(turnbull, installed),
                LifeTable.of(lifetimes, limits(curve.longestHours())),
                causes(installations),
                look,
                RetentionWords.sentence(spans.size(), lost, installations, curve, steps));
    }

    private static List<GroupStudy.Step> steps(
            KaplanMeier curve, List<List<Lifetime>> found, List<WatchedInstallation> installations) {
        return curve.steps().stream()
                .map(s -> new GroupStudy.Step(
                        s,
                        SharedFate.interval(found, s.hours(), CONFIDENCE),
                        installations.stream()
                                .flatMap(i -> i.devices().stream())
                                .filter(d -> d.span().byHours() == s.hours())
                                .toList()))
                .toList();
    }

    private static List<GroupStudy.Place> places(Turnbull curve, List<Installed> installed) {
        List<Turnbull.Place> finite = curve.places().stream()
                .filter(p -> p.byHours() < Double.POSITIVE_INFINITY)
                .toList();
        if (finite.isEmpty()) {
            return List.of();
        }
        List<Double> hours = finite.stream().map(Turnbull.Place::byHours).toList();
        List<Interval> devices = Bootstrap.USUAL.ofDevices(installed, hours, CONFIDENCE);
        List<Interval> whole = Bootstrap.USUAL.ofInstallations(installed, hours, CONFIDENCE);
        List<GroupStudy.Place> places = new ArrayList<>();
        for (int i = 0; i < finite.size(); i++) {
            Turnbull.Place p = finite.get(i);
            places.add(new GroupStudy.Place(
                    p.afterHours(),
                    p.byHours(),
                    p.mass(),
                    curve.survivalAt(p.byHours()),
                    devices.get(i),
                    whole == null ? null : whole.get(i)));
        }
        return List.copyOf(places);
    }

    /** Ends of intervals of one width, as few as a page can hold. */
    static List<Double> limits(double longestHours) {
        double width = WIDTHS[WIDTHS.length - 1];
        for (int i = WIDTHS.length - 1; i >= 0; i--) {
            if (Math.ceil(longestHours / WIDTHS[i]) <= MOST_ROWS) {
                width = WIDTHS[i];
            }
        }
        List<Double> limits = new ArrayList<>();
        for (int k = 1; limits.isEmpty() || limits.get(limits.size() - 1) < longestHours; k++) {
            limits.add(k * width);
        }
        return limits;
    }

    private static Map<LossCause, Long> causes(List<WatchedInstallation> installations) {
        Map<LossCause, Long> causes = new EnumMap<>(LossCause.class);
        for (WatchedInstallation each : installations) {
            for (WatchedDevice device : each.devices()) {
                LossDocument loss = device.loss();
                LossCause cause = loss == null ? null : loss.cause();
                if (device.span().lost() && cause != null) {
                    causes.merge(cause, 1L, Long::sum);
                }
            }
        }
        return causes;
    }

    private static GroupStudy.Look look(
            KaplanMeier curve, List<GroupStudy.Step> steps, List<WatchedInstallation> installations, int lost) {
        int fitted =
                installations.stream().mapToInt(i -> i.devices().size()).max().orElse(1);
        double hours = lost == 0 ? RetentionWords.shortest(installations) : curve.longestHours();
        double lowest = lost == 0
                ? 1 - Binomial.upperLimitOfNone(curve.count(), CONFIDENCE)
                : lowest(steps.get(steps.size() - 1));
        Double every = lowest <= 0 ? null : rounded(LookInterval.hours(lowest, hours, fitted, ACCEPTED_LOSSES));
        return new GroupStudy.Look(every, lowest, hours, fitted);
    }

    private static double lowest(GroupStudy.Step last) {
        Interval shared = last.shared();
        return shared == null ? last.step().low() : Math.min(last.step().low(), shared.low());
    }

    /** Down to whole hours, from 10 on to fives; null under one. */
    private static @Nullable Double rounded(double hours) {
        if (hours < 1) {
            return null;
        }
        return hours < 10 ? Math.floor(hours) : 5 * Math.floor(hours / 5);
    }
}
