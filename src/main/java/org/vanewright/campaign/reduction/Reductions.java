package org.vanewright.campaign.reduction;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Service;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.campaign.CalibrationDocument;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.campaign.CampaignRules;
import org.vanewright.campaign.CampaignService;
import org.vanewright.platform.HeapShare;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/** Reduces campaigns: looks up the aircraft and the calibration they name, and computes. */
@Service
public class Reductions {
    /** Bytes that a test point takes, as read and reduced, about. */
    private static final int POINT = 1200;

    /** Test points of those that are kept; a campaign has up to 500. */
    private static final long MOST_POINTS = HeapShare.bytes(40) / POINT;

    private final CampaignService campaigns;
    private final Cache<String, Optional<ReducedCampaign>> kept = Caffeine.newBuilder()
            .maximumWeight(MOST_POINTS)
            .weigher((String hash, Optional<ReducedCampaign> reduced) ->
                    10 + reduced.map(r -> (int) r.points().count()).orElse(0))
            .build();

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

    /**
     * What follows from a revision. A public one names exact public revisions only, so that its content says all; anything
     * else is reduced anew, since who sees the records it names depends on who asks.
     */
    public Optional<ReducedCampaign> of(Revision<CampaignDocument> revision) {
        return revision.isPublic()
                ? kept.get(revision.contentKey(), hash -> of(revision.content()))
                : of(revision.content());
    }
}
