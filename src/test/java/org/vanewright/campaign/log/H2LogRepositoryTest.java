package org.vanewright.campaign.log;

import org.vanewright.testing.Databases;

class H2LogRepositoryTest extends LogRepositoryContract {
    H2LogRepositoryTest() {
        super(Databases.Engine.H2);
    }
}
