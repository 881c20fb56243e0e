package org.vanewright.retention.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.inference.Interval;
import org.vanewright.engineering.inference.survival.LogRank;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.retention.Counted;
import org.vanewright.retention.GroupStudy;
import org.vanewright.retention.Grouping;
import org.vanewright.retention.RetentionStudy;
import org.vanewright.retention.RetentionWords;
import org.vanewright.retention.WatchedInstallation;

/**
 * A study as JSON.
 *
 * @param by by what devices are compared
 * @param count which losses count
 * @param confidence of every interval
 * @param invented whether demonstration data are among what it follows from
 * @param groups the largest first
 * @param logRank null where nothing can be compared
 * @param method how it was computed
 * @param sources citations
 * @param validity warnings
 */
record RetentionBody(
        Grouping by,
        Counted count,
        double confidence,
        boolean invented,
        List<Group> groups,
        @Nullable Test logRank,
        String method,
        List<String> sources,
        List<String> validity) {
    /** The log-rank test. */
    record Test(double chiSquared, int degreesOfFreedom, double pValue) {}

    /** A time at which losses were found; the last two are limits with the installation as the unit. */
    record Step(
            double hours,
            int atRisk,
            int lost,
            double survival,
            double standardError,
            double low,
            double high,
            @Nullable Double installationLow,
            @Nullable Double installationHigh) {}

    /** Hours between which a share was lost, by Turnbull's estimator. */
    record Between(
            double afterHours,
            double byHours,
            double share,
            double survival,
            double low,
            double high,
            @Nullable Double installationLow,
            @Nullable Double installationHigh) {}

    /** An installation with the inspections behind it. */
    record Basis(RevisionRef installation, int devices, double hoursFlown, List<RevisionRef> inspections) {}

    /** One group. */
    record Group(
            String name,
            int devices,
            int lost,
            String sentence,
            List<Step> curve,
            List<Between> intervals,
            @Nullable Double medianHours,
            @Nullable Double lookEveryHours,
            String look,
            List<Basis> basis) {}

    static RetentionBody of(RetentionStudy study) {
        LogRank test = study.logRank();
        return new RetentionBody(
                study.query().by(),
                study.query().counted(),
                RetentionStudy.CONFIDENCE,
                study.invented(),
                study.groups().stream().map(RetentionBody::group).toList(),
                test == null ? null : new Test(test.chiSquared(), test.degreesOfFreedom(), test.pValue()),
                RetentionStudy.METHOD,
                RetentionStudy.SOURCES,
                RetentionStudy.VALIDITY);
    }

    private static Group group(GroupStudy g) {
        return new Group(
                g.name(),
                g.devices(),
                g.lost(),
                g.sentence(),
                g.steps().stream().map(RetentionBody::step).toList(),
                g.places().stream().map(RetentionBody::between).toList(),
                g.foundCurve().medianHours(),
                g.look().everyHours(),
                RetentionWords.look(g),
                g.installations().stream().map(RetentionBody::basis).toList());
    }

    private static Step step(GroupStudy.Step s) {
        Interval shared = s.shared();
        return new Step(
                s.step().hours(),
                s.step().atRisk(),
                s.step().lost(),
                s.step().survival(),
                s.step().standardError(),
                s.step().low(),
                s.step().high(),
                shared == null ? null : (Double) shared.low(),
                shared == null ? null : (Double) shared.high());
    }

    private static Between between(GroupStudy.Place p) {
        Interval whole = p.installations();
        return new Between(
                p.afterHours(),
                p.byHours(),
                p.share(),
                p.left(),
                p.devices().low(),
                p.devices().high(),
                whole == null ? null : (Double) whole.low(),
                whole == null ? null : (Double) whole.high());
    }

    private static Basis basis(WatchedInstallation i) {
        return new Basis(
                i.revision().ref(),
                i.devices().size(),
                i.hoursFlown(),
                i.inspections().stream().map(Revision::ref).toList());
    }
}
