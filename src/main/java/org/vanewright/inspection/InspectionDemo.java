package org.vanewright.inspection;

import org.springframework.stereotype.Component;
import org.vanewright.record.demo.DemoDocuments;
import org.vanewright.record.demo.DemoRecords;

@Component
class InspectionDemo extends DemoRecords<InspectionDocument> {
    InspectionDemo(DemoDocuments documents, InspectionService inspections) {
        super(documents, inspections, "inspections", InspectionDocument.class, 70);
    }
}
