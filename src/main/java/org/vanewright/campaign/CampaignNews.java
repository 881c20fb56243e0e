package org.vanewright.campaign;

import org.springframework.stereotype.Component;
import org.vanewright.catalogue.RecordNews;

@Component
class CampaignNews extends RecordNews {
    CampaignNews(CampaignService campaigns) {
        super("Campaign", "campaigns", campaigns);
    }
}
