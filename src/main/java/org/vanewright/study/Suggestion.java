package org.vanewright.study;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.vane.DragBand;
import org.vanewright.engineering.vane.GuidanceCheck;
import org.vanewright.engineering.vane.GuidanceCheck.Verdict;
import org.vanewright.engineering.vane.SideLoad;
import org.vanewright.engineering.vane.VaneProportions;

/**
 * A row that meets recommendations better or worse than others. It is a starting point for a test programme, never a
 * result.
 *
 * @param row device, place and proportions
 * @param trial as a study looks at it; its vanes are those that found a place
 * @param score 0 to 1: the mean over conditions and recommendations of {@link #agreement}
 * @param conditions each with what came of it
 * @param fitted what comes of placing it
 */
public record Suggestion(SuggestedRow row, RowTrial trial, double score, List<AtCondition> conditions, Fitted fitted) {
    public String deviceName() {
        return row.device().content().name();
    }

    /** Whether two vanes share a base, whose angle and gap are the device's own. */
    public boolean pairOnOneBase() {
        return row.device().content().pair() != null;
    }

    /**
     * The row placed on the airframe.
     *
     * @param devices of both wings that found a place
     * @param moved that gave way to a keep-out, joint or end
     * @param leftOut that found no place
     * @param reasons why
     * @param loadAtVne side load on one vane; null where the airframe states no never-exceed speed
     * @param drag of all vanes at the fastest condition
     */
    public record Fitted(
            int devices,
            int moved,
            int leftOut,
            List<String> reasons,
            @Nullable SideLoad loadAtVne,
            DragBand drag) {}

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
