package org.vanewright.campaign.reduction;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.campaign.CalibrationDocument;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.campaign.CampaignRules;
import org.vanewright.campaign.CampaignService;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/** Reduces campaigns: looks up the aircraft and the calibration they name, and computes. */
@Service
public class Reductions {
    private final CampaignService campaigns;

    Reductions(CampaignService campaigns) {
        this.campaigns = campaigns;
    }

    /** What follows from a campaign; empty while it breaks its rules, names an aircraft nobody sees, or has no points. */
    public Optional<ReducedCampaign> of(CampaignDocument campaign) {
        boolean sound = CampaignRules.check(campaign).stream()
                .noneMatch(p -> p.field().startsWith("plan.") || p.field().startsWith("points"));
        Optional<Revision<AirframeDocument>> airframe = campaigns.airframe(campaign);
        if (!sound || airframe.isEmpty() || campaign.points().isEmpty()) {
            return Optional.empty();
        }
        SpeedCalibration calibration = calibration(campaign);
        return Optional.of(new CampaignReducer(campaign, airframe.get().content(), calibration).reduce());
    }

    private SpeedCalibration calibration(CampaignDocument campaign) {
        CalibrationDocument named = campaign.plan().calibration();
        RevisionRef ref = named.campaign();
        if (ref == null) {
            return SpeedCalibration.of(campaign, null, named.degreeOrLine());
        }
        return campaigns
                .find(ref)
                .map(r -> SpeedCalibration.of(r.content(), ref, named.degreeOrLine()))
                .orElseGet(() -> new SpeedCalibration(ref, List.of(), List.of(), null));
    }

    /** What follows from a revision. */
    public Optional<ReducedCampaign> of(@Nullable Revision<CampaignDocument> revision) {
        return revision == null ? Optional.empty() : of(revision.content());
    }
}
