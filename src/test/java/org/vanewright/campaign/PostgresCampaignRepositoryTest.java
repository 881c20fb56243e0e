package org.vanewright.campaign;

import org.vanewright.testing.Databases;

class PostgresCampaignRepositoryTest extends CampaignRepositoryContract {
    PostgresCampaignRepositoryTest() {
        super(Databases.Engine.POSTGRESQL);
    }
}
