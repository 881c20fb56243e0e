package org.vanewright.campaign.reduction;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.vanewright.campaign.CampaignComparisons;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.campaign.ConfigurationDocument;
import org.vanewright.engineering.inference.Claim;
import org.vanewright.engineering.inference.Comparison;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/** Comparisons of reduced campaigns. */
@Component
class ReducedComparisons implements CampaignComparisons {
    private final Reductions reductions;

    ReducedComparisons(Reductions reductions) {
        this.reductions = reductions;
    }

    @Override
    public List<Compared> of(Revision<CampaignDocument> campaign) {
        return reductions.of(campaign).stream()
                .flatMap(reduced -> reduced.conclusions().stream().flatMap(c -> compared(reduced, c)))
                .toList();
    }

    private static Stream<Compared> compared(ReducedCampaign reduced, Conclusion conclusion) {
        ConfigurationDocument flown = conclusion.configuration().configuration();
        Comparison comparison = conclusion.comparison();
        Claim claim = conclusion.claim();
        RevisionRef layout = flown.layout();
        Double mean = reduced.baseline().mean();
        if (comparison == null || claim == null || layout == null || mean == null) {
            return Stream.empty();
        }
        return Stream.of(new Compared(
                text(flown.key()),
                text(flown.name()),
                layout,
                reduced.measure(),
                comparison,
                Outcome.relativeChange(reduced.baseline(), comparison),
                mean,
                claim.changeSeen(),
                reduced.calibration().curve() != null));
    }

    private static String text(@Nullable String given) {
        return Optional.ofNullable(given).orElse("");
    }
}
