package org.vanewright.airframe;

import org.springframework.stereotype.Component;
import org.vanewright.record.demo.DemoData;
import org.vanewright.record.demo.DemoDocuments;

@Component
class AirframeDemo implements DemoData {
    private final DemoDocuments documents;
    private final AirframeService airframes;

    AirframeDemo(DemoDocuments documents, AirframeService airframes) {
        this.documents = documents;
        this.airframes = airframes;
    }

    @Override
    public int order() {
        return 10;
    }

    @Override
    public void load() {
        documents
                .read("airframes", AirframeDocument.class)
                .forEach((slug, document) -> documents.publish(
                        slug,
                        document,
                        airframes::latest,
                        d -> airframes.publish(d, DemoDocuments.CONTRIBUTOR, null),
                        (base, d) -> airframes.publishNext(base.ref(), d, DemoDocuments.CONTRIBUTOR)));
    }
}
