package org.vanewright.installation;

import org.springframework.stereotype.Component;
import org.vanewright.record.demo.DemoDocuments;
import org.vanewright.record.demo.DemoRecords;

@Component
class InstallationDemo extends DemoRecords<InstallationDocument> {
    InstallationDemo(DemoDocuments documents, InstallationService installations) {
        super(documents, installations, "installations", InstallationDocument.class, 60);
    }
}
