package org.vanewright.campaign;

import org.vanewright.testing.Databases;

class H2CampaignRepositoryTest extends CampaignRepositoryContract {
    H2CampaignRepositoryTest() {
        super(Databases.Engine.H2);
    }
}
