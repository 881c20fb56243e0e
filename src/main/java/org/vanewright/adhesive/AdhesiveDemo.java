package org.vanewright.adhesive;

import org.springframework.stereotype.Component;
import org.vanewright.record.demo.DemoDocuments;
import org.vanewright.record.demo.DemoRecords;

@Component
class AdhesiveDemo extends DemoRecords<AdhesiveDocument> {
    AdhesiveDemo(DemoDocuments documents, AdhesiveService adhesives) {
        super(documents, adhesives, "adhesives", AdhesiveDocument.class, 25);
    }
}
