package org.vanewright.campaign.reduction;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.catalogue.MeasuredEffects.Effect;
import org.vanewright.record.Lists;
import org.vanewright.record.RevisionRef;

/**
 * What a published revision of a campaign came to, without its test points.
 *
 * @param name of the campaign
 * @param invented true for demonstration data
 * @param createdAt when the revision was made, as in ISO 8601
 * @param airframeName what it was flown with
 * @param flown how many test points there are, in words
 * @param pointed whether any test point was flown
 * @param lines of each configuration compared, in the order of the plan
 */
public record CampaignSummary(
        String name,
        boolean invented,
        String createdAt,
        String airframeName,
        String flown,
        boolean pointed,
        List<Line> lines) {
    public CampaignSummary {
        lines = Lists.present(lines);
    }

    /**
     * One configuration against the unmodified aircraft.
     *
     * @param key of the configuration in its plan
     * @param label of the configuration
     * @param layout that was fitted
     * @param sentence what may be said
     * @param claimed whether that says something of the layout
     * @param flown whether it has test points
     * @param effect the change; null where none can be given
     */
    public record Line(
            String key,
            String label,
            @Nullable RevisionRef layout,
            String sentence,
            boolean claimed,
            boolean flown,
            @Nullable Effect effect) {
        boolean isOf(String layoutSlug) {
            return layout != null && layout.slug().equals(layoutSlug);
        }
    }
}
