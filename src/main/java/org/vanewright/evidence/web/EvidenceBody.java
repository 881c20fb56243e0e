package org.vanewright.evidence.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.airframe.OperatingBasis;
import org.vanewright.campaign.Measure;
import org.vanewright.engineering.inference.Interval;
import org.vanewright.engineering.inference.meta.RandomEffects;
import org.vanewright.engineering.inference.meta.TauEstimator;
import org.vanewright.evidence.EvidenceStudy;
import org.vanewright.evidence.EvidenceStudy.Item;
import org.vanewright.evidence.Finding;
import org.vanewright.evidence.Scale;
import org.vanewright.evidence.Summary;
import org.vanewright.record.RevisionRef;

/**
 * Published comparisons as JSON.
 *
 * @param quantity what was compared
 * @param scale of changes in {@code findings[].change} and {@code summary}
 * @param unit of that scale
 * @param campaigns how many are published in all
 * @param awaited how many of them are still to be looked at
 * @param group what those have in common that are summed up; null where there is none
 * @param groups to choose from
 * @param findings newest first
 * @param nextCursor asks for those after these; absent with the last ones
 * @param summary of those that are counted; null where fewer than five campaigns are comparable
 * @param refusal why there is none
 * @param method how it was computed
 * @param sources citations
 * @param validity limits
 */
record EvidenceBody(
        Measure quantity,
        Scale scale,
        String unit,
        int campaigns,
        int awaited,
        @Nullable String group,
        List<Group> groups,
        List<Found> findings,
        @Nullable String nextCursor,
        @Nullable Summed summary,
        @Nullable String refusal,
        String method,
        List<String> sources,
        List<String> validity) {
    /** Comparable comparisons; {@code key} is what the parameter {@code group} takes. */
    record Group(String key, String words, int campaigns, int findings) {}

    /** A change with its standard error and 95 % interval. */
    record Change(double difference, double standardError, double low, double high) {}

    /** One comparison. */
    record Found(
            RevisionRef campaign,
            String campaignSha256,
            String campaignName,
            RevisionRef airframe,
            @Nullable OperatingBasis operatingBasis,
            RevisionRef layout,
            String configuration,
            String unit,
            int baselineCount,
            int modifiedCount,
            double baselineMean,
            Change changeInUnit,
            @Nullable Change changePercent,
            @Nullable Double chordFraction,
            @Nullable Double heightOverThickness,
            String flaps,
            String power,
            boolean airspeedsCalibrated,
            boolean invented,
            boolean counted,
            List<String> notCountedBecause) {}

    /** Random effects; squares of the scale's unit where squared. */
    record Summed(
            TauEstimator estimator,
            int campaigns,
            int aircraft,
            double mean,
            double low,
            double high,
            double standardError,
            @Nullable Double anotherLow,
            @Nullable Double anotherHigh,
            double q,
            int degreesOfFreedom,
            double pValue,
            double iSquared,
            double tauSquared,
            double tauSquaredLow,
            double tauSquaredHigh,
            double fixedMean,
            double fixedStandardError,
            String sentence) {}

    static EvidenceBody of(EvidenceStudy study, List<Item> items, @Nullable String nextCursor) {
        return new EvidenceBody(
                study.query().quantity(),
                study.query().scale(),
                study.query().scale().unit(study.query().quantity()),
                study.known().campaigns(),
                study.known().awaited(),
                study.group() == null ? null : study.group().alike().key(),
                study.groups().stream()
                        .map(g -> new Group(g.alike().key(), g.alike().words(), g.campaigns(), g.findings()))
                        .toList(),
                items.stream().map(EvidenceBody::found).toList(),
                nextCursor,
                study.summary() == null ? null : summed(study.summary()),
                study.refusal(),
                Summary.METHOD,
                Summary.SOURCES,
                Summary.VALIDITY);
    }

    private static Found found(Item item) {
        Finding f = item.finding();
        Scale.Change percent = Scale.PERCENT.of(f);
        return new Found(
                f.campaign(),
                f.campaignSha256(),
                f.campaignName(),
                f.airframe(),
                f.operatingBasis(),
                f.layout(),
                f.configurationKey(),
                f.unit(),
                f.baselineCount(),
                f.modifiedCount(),
                f.baselineMean(),
                change(f.change(), f.standardError(), f.interval()),
                percent == null ? null : change(percent.value(), percent.standardError(), percent.interval()),
                f.chordFraction(),
                f.heightOverThickness(),
                f.setting().flaps(),
                f.setting().power(),
                f.calibrated(),
                f.invented(),
                item.counted(),
                item.why());
    }

    private static Change change(double value, double standardError, Interval interval) {
        return new Change(value, standardError, interval.low(), interval.high());
    }

    private static Summed summed(Summary summary) {
        RandomEffects e = summary.effects();
        Interval another = e.prediction();
        return new Summed(
                e.estimator(),
                e.count(),
                summary.aircraft(),
                e.mean(),
                e.interval().low(),
                e.interval().high(),
                e.adjustedError(),
                another == null ? null : (Double) another.low(),
                another == null ? null : (Double) another.high(),
                e.heterogeneity().q(),
                e.heterogeneity().degreesOfFreedom(),
                e.heterogeneity().pValue(),
                e.heterogeneity().iSquared(),
                e.heterogeneity().tauSquared(),
                e.heterogeneity().tauSquaredInterval().low(),
                e.heterogeneity().tauSquaredInterval().high(),
                e.fixedMean(),
                e.fixedError(),
                summary.sentence());
    }
}
