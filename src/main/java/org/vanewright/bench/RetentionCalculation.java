package org.vanewright.bench;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.inference.survival.Binomial;
import org.vanewright.engineering.inference.survival.KaplanMeier;
import org.vanewright.engineering.inference.survival.Lifetime;
import org.vanewright.engineering.inference.survival.LogRank;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;

/** Retention curves of right-censored groups, and whether they differ. */
public final class RetentionCalculation {
    static final String METHOD =
            "The product-limit curve of Kaplan and Meier, one step for each time of losses; who is censored at such a time is"
                    + " at risk there. Standard errors are Greenwood's, limits are symmetric on the log-log scale and hold"
                    + " at each time by itself. The median is the first time with half or fewer left. Groups are compared"
                    + " by the log-rank test with the hypergeometric covariance.";
    static final List<String> SOURCES = List.of(
            "E. L. Kaplan and P. Meier, Nonparametric Estimation from Incomplete Observations, J. Am. Stat. Assoc. 53, 1958"
                    + " (from memory)",
            "M. Greenwood, The Natural Duration of Cancer, 1926 (from memory)",
            "J. D. Kalbfleisch and R. L. Prentice, The Statistical Analysis of Failure Time Data, 2nd ed. 2002, section 1.4"
                    + " (from memory)",
            "N. Mantel, Cancer Chemotherapy Reports 50, 1966 (from memory)");
    static final String SHARED_FATE =
            "Each device counts by itself. Devices of one installation share skin, tape and hands;"
                    + " where they do, the true limits are wider and the test is too sure (see Retention for limits with the"
                    + " installation as the unit).";
    private static final int MOST_GROUPS = 20;
    private static final int MOST_OBSERVATIONS = 10_000;
    private static final double MOST_HOURS = 1e6;
    private static final double USUAL_CONFIDENCE = 0.95;
    private static final int FEW = 5;

    private RetentionCalculation() {}

    /** A group, checked. */
    public record Observed(String name, List<Lifetime> lifetimes) {}

    /** @throws InvalidInputException naming each field that is missing or out of range */
    public static RetentionResult run(RetentionRequest request) {
        List<Observed> groups = groups(request);
        double confidence = confidence(request);
        List<RetentionResult.Group> results = new ArrayList<>();
        for (Observed each : groups) {
            KaplanMeier curve = KaplanMeier.of(each.lifetimes(), confidence);
            results.add(new RetentionResult.Group(
                    each.name(),
                    curve.steps().stream().map(RetentionCalculation::step).toList(),
                    curve.medianHours()));
        }
        LogRank test = groups.size() < 2
                ? null
                : LogRank.of(groups.stream().map(Observed::lifetimes).toList());
        return new RetentionResult(
                results,
                test == null
                        ? null
                        : new RetentionResult.LogRankTest(test.chiSquared(), test.degreesOfFreedom(), test.pValue()),
                METHOD,
                SOURCES,
                validity(groups, test, confidence));
    }

    private static RetentionResult.Step step(KaplanMeier.Step s) {
        return new RetentionResult.Step(
                s.hours(), s.atRisk(), s.lost(), s.survival(), s.standardError(), s.low(), s.high());
    }

    /** The confidence of a request, checked by {@link #groups}. */
    public static double confidence(RetentionRequest request) {
        return Objects.requireNonNullElse(request.confidence(), USUAL_CONFIDENCE);
    }

    /** The groups of a request, checked. */
    public static List<Observed> groups(RetentionRequest request) {
        Checks checks = new Checks();
        checks.range("confidence", confidence(request), 0.5, 0.9999, "");
        List<RetentionRequest.@Nullable Group> given = request.groups();
        int count = given == null ? 0 : given.size();
        checks.require(
                count >= 1 && count <= MOST_GROUPS,
                "groups",
                given == null ? null : count + " groups",
                "1 to " + MOST_GROUPS + " groups");
        List<Observed> groups = new ArrayList<>();
        for (int i = 0; given != null && i < Math.min(count, MOST_GROUPS); i++) {
            Observed group = group(checks, "groups[" + i + "]", given.get(i));
            if (group != null) {
                groups.add(group);
            }
        }
        checks.throwIfAny();
        return groups;
    }

    private static @Nullable Observed group(Checks checks, String path, RetentionRequest.@Nullable Group group) {
        if (group == null) {
            checks.present(path, null, "a group");
            return null;
        }
        String name = group.name();
        checks.text(path + ".name", name, 120);
        List<RetentionRequest.@Nullable Observation> given = group.observations();
        int count = given == null ? 0 : given.size();
        boolean many = checks.require(
                count >= 1 && count <= MOST_OBSERVATIONS,
                path + ".observations",
                given == null ? null : count + " observations",
                "1 to " + MOST_OBSERVATIONS + " observations");
        List<Lifetime> lifetimes = new ArrayList<>();
        for (int i = 0; many && given != null && i < count; i++) {
            Lifetime lifetime = observation(checks, path + ".observations[" + i + "]", given.get(i));
            if (lifetime != null) {
                lifetimes.add(lifetime);
            }
        }
        return name == null ? null : new Observed(name, lifetimes);
    }

    private static @Nullable Lifetime observation(
            Checks checks, String path, RetentionRequest.@Nullable Observation given) {
        if (given == null) {
            checks.present(path, null, "an observation");
            return null;
        }
        Double hours = given.hours();
        Boolean lost = given.lost();
        boolean known = checks.range(path + ".hours", hours, 0, MOST_HOURS, "h");
        checks.present(path + ".lost", lost, "true or false");
        return known && hours != null && lost != null ? new Lifetime(hours, lost) : null;
    }

    private static List<String> validity(List<Observed> groups, @Nullable LogRank test, double confidence) {
        List<String> validity = new ArrayList<>();
        validity.add(SHARED_FATE);
        for (Observed each : groups) {
            int count = each.lifetimes().size();
            long lost = each.lifetimes().stream().filter(Lifetime::lost).count();
            if (lost == 0) {
                validity.add(String.format(
                        Locale.ROOT,
                        "%s: nothing was lost of %d. With %s %% confidence at most %.1f %% of such devices are lost within"
                                + " the shortest time that any of them was watched.",
                        each.name(),
                        count,
                        percent(confidence),
                        100 * Binomial.upperLimitOfNone(count, confidence)));
            } else if (lost < FEW) {
                validity.add(each.name() + ": fewer than five were lost, so that limits are rough.");
            }
            if (each.lifetimes().stream().anyMatch(l -> l.hours() == 0 && l.lost())) {
                validity.add(each.name() + ": some were lost at 0 h, which usually means that they never held.");
            }
        }
        if (groups.size() > 1 && test == null) {
            validity.add("Nothing was lost while more than one group was at risk: the groups cannot be compared.");
        }
        return List.copyOf(validity);
    }

    private static String percent(double confidence) {
        return BigDecimal.valueOf(100 * confidence)
                .setScale(2, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }
}
