package org.vanewright.device;

import org.springframework.stereotype.Component;
import org.vanewright.record.demo.DemoDocuments;
import org.vanewright.record.demo.DemoRecords;

@Component
class DeviceDemo extends DemoRecords<DeviceDocument> {
    DeviceDemo(DemoDocuments documents, DeviceService devices) {
        super(documents, devices, "devices", DeviceDocument.class, 20);
    }
}
