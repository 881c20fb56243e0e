package org.vanewright.evidence;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.campaign.CampaignComparisons;
import org.vanewright.campaign.CampaignComparisons.Compared;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.campaign.CampaignService;
import org.vanewright.campaign.ConditionsDocument;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/** Reads the comparisons of one campaign. */
@Component
class FindingReader {
    private static final Logger LOG = LoggerFactory.getLogger(FindingReader.class);

    private final CampaignService campaigns;
    private final CampaignComparisons comparisons;
    private final FittedReader fitted;

    FindingReader(CampaignService campaigns, CampaignComparisons comparisons, FittedReader fitted) {
        this.campaigns = campaigns;
        this.comparisons = comparisons;
        this.fitted = fitted;
    }

    /** Of a public revision, which names exact public revisions only, so that its hash says all. */
    List<Finding> of(Revision<CampaignDocument> campaign) {
        Optional<Revision<AirframeDocument>> airframe = campaigns.airframe(campaign.content());
        if (airframe.isEmpty()) {
            return List.of();
        }
        Map<RevisionRef, Optional<Fitted>> places = new HashMap<>();
        List<Finding> findings = new ArrayList<>();
        for (Compared each : compared(campaign)) {
            Fitted place = places.computeIfAbsent(each.layout(), ref -> Optional.ofNullable(fitted.of(ref)))
                    .orElse(null);
            findings.add(finding(campaign, airframe.get(), each, findings.size(), place));
        }
        return List.copyOf(findings);
    }

    /** One campaign that cannot be reduced must not hide all others. */
    private List<Compared> compared(Revision<CampaignDocument> campaign) {
        try {
            return comparisons.of(campaign);
        } catch (InvalidInputException e) {
            LOG.warn("campaign {} cannot be reduced: {}", campaign.ref(), e.getMessage());
            return List.of();
        }
    }

    private static Finding finding(
            Revision<CampaignDocument> campaign,
            Revision<AirframeDocument> airframe,
            Compared compared,
            int place,
            @Nullable Fitted fitted) {
        return new Finding(
                campaign.ref(),
                campaign.content().name(),
                campaign.sha256(),
                campaign.shownAt(),
                campaign.contributor(),
                airframe.ref(),
                airframe.content().name(),
                airframe.content().operatingBasis(),
                compared.layout(),
                compared.key(),
                compared.name(),
                place,
                compared.measure(),
                compared.comparison(),
                compared.relative(),
                compared.baselineMean(),
                compared.changeSeen(),
                setting(campaign.content().plan().conditions()),
                compared.calibrated(),
                fitted,
                campaign.content().invented());
    }

    private static Finding.Setting setting(ConditionsDocument conditions) {
        return new Finding.Setting(
                text(conditions.flaps()), text(conditions.power()), text(conditions.centreOfGravity()));
    }

    private static String text(@Nullable String given) {
        return given == null ? "" : given.strip();
    }
}
