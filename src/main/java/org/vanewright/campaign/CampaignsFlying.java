package org.vanewright.campaign;

import java.util.List;
import org.springframework.stereotype.Component;
import org.vanewright.kit.FlownCampaigns;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/** Tells kits which published campaigns fly a revision of a layout. */
@Component
class CampaignsFlying implements FlownCampaigns {
    private final CampaignService campaigns;

    CampaignsFlying(CampaignService campaigns) {
        this.campaigns = campaigns;
    }

    @Override
    public List<RevisionRef> flying(RevisionRef layout) {
        return campaigns.withLayout(layout.slug()).stream()
                .filter(r -> r.content().plan().configurations().stream().anyMatch(c -> layout.equals(c.layout())))
                .map(Revision::ref)
                .toList();
    }
}
