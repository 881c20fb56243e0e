package org.vanewright.campaign.reduction;

import org.jspecify.annotations.Nullable;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.engineering.inference.Comparison;
import org.vanewright.engineering.inference.RelativeChange;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/**
 * What one configuration of one campaign came to, in a form that can stand beside those of other aircraft.
 *
 * @param revision of the campaign, which pins the layout that was flown
 * @param aircraft its name
 * @param reduced the campaign it belongs to
 * @param conclusion of the configuration against the unmodified aircraft
 * @param liftChange change of the lift coefficient at the stall; null for other measures
 */
public record Outcome(
        Revision<CampaignDocument> revision,
        String aircraft,
        ReducedCampaign reduced,
        Conclusion conclusion,
        @Nullable Comparison liftChange) {
    /** How it is named in addresses, such as {@code clean-stall@2.B}. */
    public String reference() {
        return reference(
                revision.ref(), conclusion.configuration().configuration().key());
    }

    static String reference(RevisionRef campaign, @Nullable String key) {
        return campaign.slug() + "@" + campaign.revision() + "." + key;
    }

    /**
     * Change over the mean of the unmodified aircraft, whose uncertainty counts, too; null while nothing can be said, or
     * where that mean cannot be told from 0.
     */
    public @Nullable RelativeChange relativeChange() {
        return relativeChange(reduced.baseline(), conclusion.comparison());
    }

    static @Nullable RelativeChange relativeChange(ReducedConfiguration baseline, @Nullable Comparison comparison) {
        Double mean = baseline.mean();
        Double scatter = baseline.standardDeviation();
        return comparison == null || mean == null || scatter == null
                ? null
                : RelativeChange.of(
                        comparison, mean, scatter / Math.sqrt(baseline.points().size()));
    }
}
