package org.vanewright.inspection;

import org.vanewright.testing.Databases;

class H2InspectionRepositoryTest extends InspectionRepositoryContract {
    H2InspectionRepositoryTest() {
        super(Databases.Engine.H2);
    }
}
