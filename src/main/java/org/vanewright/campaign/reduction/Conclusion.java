package org.vanewright.campaign.reduction;

import org.jspecify.annotations.Nullable;
import org.vanewright.campaign.Measure;
import org.vanewright.engineering.inference.Claim;
import org.vanewright.engineering.inference.Comparison;

/**
 * One configuration against the unmodified aircraft.
 *
 * @param configuration what was flown
 * @param comparison the numbers; null where there are too few test points
 * @param claim what may be said; null likewise
 * @param adjustedPValue corrected where several are compared
 * @param missing why there is nothing to say yet; null where there is
 */
public record Conclusion(
        ReducedConfiguration configuration,
        @Nullable Comparison comparison,
        @Nullable Claim claim,
        @Nullable Double adjustedPValue,
        @Nullable String missing) {
    /** What may be said, as a sentence, or why nothing may. */
    public String sentence(Measure measure) {
        return claim == null
                ? String.valueOf(missing)
                : measure.label() + (claim.changeSeen() ? " " : ": ") + claim.words() + ".";
    }
}
