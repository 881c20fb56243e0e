package org.vanewright.campaign;

import org.springframework.stereotype.Component;
import org.vanewright.record.demo.DemoDocuments;
import org.vanewright.record.demo.DemoRecords;

@Component
class CampaignDemo extends DemoRecords<CampaignDocument> {
    CampaignDemo(DemoDocuments documents, CampaignService campaigns) {
        super(documents, campaigns, "campaigns", CampaignDocument.class, 40);
    }
}
