package org.vanewright.photograph;

import org.vanewright.testing.Databases;

class H2PhotographsTest extends PhotographsContract {
    H2PhotographsTest() {
        super(Databases.Engine.H2);
    }
}
