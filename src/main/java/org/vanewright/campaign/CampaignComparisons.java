package org.vanewright.campaign;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.inference.Comparison;
import org.vanewright.engineering.inference.RelativeChange;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/** What campaigns came to, for features that look at many of them. */
public interface CampaignComparisons {
    /** Every configuration with a layout against the unmodified aircraft, in the order of the plan, where anything can be said. */
    List<Compared> of(Revision<CampaignDocument> campaign);

    /**
     * One configuration against the unmodified aircraft.
     *
     * @param key of the configuration
     * @param name of the configuration
     * @param layout exact revision that was fitted
     * @param measure what is compared
     * @param comparison the numbers, in the measure's unit
     * @param relative change over the unmodified aircraft's mean; null where that mean cannot be told from 0
     * @param baselineMean of the unmodified aircraft at standard conditions
     * @param changeSeen whether a change was seen, corrected where several configurations were compared
     * @param calibrated whether airspeeds were corrected by a position-error curve
     */
    record Compared(
            String key,
            String name,
            RevisionRef layout,
            Measure measure,
            Comparison comparison,
            @Nullable RelativeChange relative,
            double baselineMean,
            boolean changeSeen,
            boolean calibrated) {}
}
