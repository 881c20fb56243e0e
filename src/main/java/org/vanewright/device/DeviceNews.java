package org.vanewright.device;

import org.springframework.stereotype.Component;
import org.vanewright.catalogue.RecordNews;

@Component
class DeviceNews extends RecordNews {
    DeviceNews(DeviceService devices) {
        super("Device", "devices", devices);
    }
}
