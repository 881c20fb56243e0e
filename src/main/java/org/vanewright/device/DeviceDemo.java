package org.vanewright.device;

import org.springframework.stereotype.Component;
import org.vanewright.record.demo.DemoData;
import org.vanewright.record.demo.DemoDocuments;

@Component
class DeviceDemo implements DemoData {
    private final DemoDocuments documents;
    private final DeviceService devices;

    DeviceDemo(DemoDocuments documents, DeviceService devices) {
        this.documents = documents;
        this.devices = devices;
    }

    @Override
    public int order() {
        return 20;
    }

    @Override
    public void load() {
        documents
                .read("devices", DeviceDocument.class)
                .forEach((slug, document) -> documents.publish(
                        slug,
                        document,
                        devices::latest,
                        d -> devices.publish(d, DemoDocuments.CONTRIBUTOR, null),
                        (base, d) -> devices.publishNext(base.ref(), d, DemoDocuments.CONTRIBUTOR)));
    }
}
