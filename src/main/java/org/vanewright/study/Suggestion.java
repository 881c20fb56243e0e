package org.vanewright.study;

import java.util.List;
import org.vanewright.engineering.vane.GuidanceCheck;
import org.vanewright.engineering.vane.GuidanceCheck.Verdict;
import org.vanewright.engineering.vane.VaneProportions;
import org.vanewright.record.RevisionRef;

/**
 * A row that meets recommendations better or worse than others. It is a starting point for a test programme, never a
 * result.
 *
 * @param device exact revision
 * @param deviceName of it
 * @param chordFraction x/c
 * @param pitchMm along the span
 * @param angleDeg as a size
 * @param score 0 to 1: the mean over conditions and recommendations of {@link #agreement}
 * @param conditions each with what came of it
 */
public record Suggestion(
        RevisionRef device,
        String deviceName,
        double chordFraction,
        double pitchMm,
        double angleDeg,
        double score,
        List<AtCondition> conditions) {
    /**
     * The row at one flight condition.
     *
     * @param condition such as the stall
     * @param proportions there
     * @param guidance beside each chosen recommendation
     */
    public record AtCondition(StudyCondition condition, VaneProportions proportions, List<GuidanceCheck> guidance) {
        public long met() {
            return guidance.stream().filter(g -> g.verdict() == Verdict.INSIDE).count();
        }

        /** Recommendations that it does not meet, of those that can be said. */
        public List<GuidanceCheck> missed() {
            return guidance.stream()
                    .filter(g -> g.verdict() == Verdict.BELOW || g.verdict() == Verdict.ABOVE)
                    .toList();
        }

        double score() {
            return guidance.stream()
                    .filter(g -> g.verdict() != Verdict.NOT_KNOWN)
                    .mapToDouble(Suggestion::agreement)
                    .average()
                    .orElse(0);
        }
    }

    /** 1 inside a recommendation; outside it falls to one half where the value is off by half of the nearer end. */
    static double agreement(GuidanceCheck check) {
        Double off = check.offBy();
        Double value = check.value();
        if (off == null || value == null || off == 0) {
            return check.verdict() == Verdict.INSIDE ? 1 : 0;
        }
        double end = Math.abs(value - off);
        double share = Math.abs(off) / Math.max(end, 1e-9);
        return 1 / (1 + 2 * share);
    }
}
