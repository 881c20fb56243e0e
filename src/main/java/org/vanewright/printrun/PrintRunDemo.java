package org.vanewright.printrun;

import org.springframework.stereotype.Component;
import org.vanewright.record.demo.DemoDocuments;
import org.vanewright.record.demo.DemoRecords;

@Component
class PrintRunDemo extends DemoRecords<PrintRunDocument> {
    PrintRunDemo(DemoDocuments documents, PrintRunService runs) {
        super(documents, runs, "print-runs", PrintRunDocument.class, 50);
    }
}
