package org.vanewright.retention;

import java.util.List;
import java.util.Locale;
import org.vanewright.engineering.inference.Interval;
import org.vanewright.engineering.inference.survival.Binomial;
import org.vanewright.engineering.inference.survival.KaplanMeier;

/** What follows from the figures, as sentences. */
public final class RetentionWords {
    private static final double CONFIDENCE = RetentionStudy.CONFIDENCE;
    private static final String ONE = " One installation cannot say how much installations differ.";

    private RetentionWords() {}

    static String sentence(
            int devices,
            int lost,
            List<WatchedInstallation> installations,
            KaplanMeier curve,
            List<GroupStudy.Step> steps) {
        String where = installations.size() == 1 ? "1 installation" : installations.size() + " installations";
        return lost == 0
                ? none(devices, installations.size(), where, shortest(installations))
                : some(devices, lost, installations.size(), where, curve, steps.get(steps.size() - 1));
    }

    private static String none(int devices, int installations, String where, double hours) {
        return "No device of " + devices + " in " + where + " was lost in " + hours(hours) + " h: at most "
                + percent(Binomial.upperLimitOfNone(devices, CONFIDENCE))
                + " are lost in that time, if each device has a fate"
                + " of its own (95 %, one-sided; rule of three " + percent(Binomial.ruleOfThree(devices))
                + "). If the devices of an installation share a fate, the next installation loses any with a chance of at most "
                + percent(Binomial.upperLimitOfNone(installations, CONFIDENCE)) + ".";
    }

    private static String some(
            int devices, int lost, int installations, String where, KaplanMeier curve, GroupStudy.Step last) {
        KaplanMeier.Step step = last.step();
        Interval shared = last.shared();
        String wider = shared != null
                ? ", " + range(shared.low(), shared.high()) + " with the installation as the unit)."
                : ")." + (installations < 2 ? ONE : "");
        return lost + " of " + devices + (devices == 1 ? " device in " : " devices in ") + where
                + (lost == 1 ? " was" : " were") + " found lost within " + hours(curve.longestHours()) + " h: "
                + percent(step.survival()) + " are left (95 % interval " + range(step.low(), step.high())
                + " if each device has a fate of its own" + wider;
    }

    /** The time that every device was watched at least. */
    static double shortest(List<WatchedInstallation> installations) {
        return installations.stream()
                .flatMap(i -> i.devices().stream())
                .mapToDouble(d -> d.span().afterHours())
                .min()
                .orElse(0);
    }

    /** How often to look closely, with what that assumes. */
    public static String look(GroupStudy group) {
        GroupStudy.Look look = group.look();
        Double every = look.everyHours();
        String often = every == null
                ? "At such rates no interval of hours is short enough: find out why devices come off before the next flight."
                : "A close look with a pull at every device at least every " + hours(every)
                        + " h flown, and written down.";
        return often + " Assumed: losses come at a constant rate, no faster than the lower limit allows ("
                + percent(look.lowest()) + " left after " + hours(look.afterHours()) + " h), and no more than one of "
                + look.fitted() + " devices is lost on average between two looks (engineering judgement, no source)."
                + " It is never longer than what was watched, and never takes the place of the look at every device"
                + " before each flight.";
    }

    private static String range(double low, double high) {
        String from = percent(low);
        return from.substring(0, from.length() - 2) + " to " + percent(high);
    }

    /** With one decimal where it matters. */
    public static String percent(double fraction) {
        double percent = 100 * fraction;
        boolean fine = percent < 10 && percent > 0 || percent > 90 && percent < 100;
        String text = String.format(Locale.ROOT, fine ? "%.1f" : "%.0f", percent);
        return text + "\u00a0%";
    }

    /** Without a decimal that says nothing. */
    public static String hours(double hours) {
        return hours == Math.rint(hours)
                ? String.format(Locale.ROOT, "%.0f", hours)
                : String.format(Locale.ROOT, "%.1f", hours);
    }
}
