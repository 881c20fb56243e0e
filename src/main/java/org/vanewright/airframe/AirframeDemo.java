package org.vanewright.airframe;

import org.springframework.stereotype.Component;
import org.vanewright.record.demo.DemoDocuments;
import org.vanewright.record.demo.DemoRecords;

@Component
class AirframeDemo extends DemoRecords<AirframeDocument> {
    AirframeDemo(DemoDocuments documents, AirframeService airframes) {
        super(documents, airframes, "airframes", AirframeDocument.class, 10);
    }
}
