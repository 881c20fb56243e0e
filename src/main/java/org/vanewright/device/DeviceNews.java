package org.vanewright.device;

import java.util.List;
import org.springframework.stereotype.Component;
import org.vanewright.catalogue.NewsItem;
import org.vanewright.catalogue.NewsSource;

@Component
class DeviceNews implements NewsSource {
    private final DeviceService devices;

    DeviceNews(DeviceService devices) {
        this.devices = devices;
    }

    @Override
    public List<NewsItem> latest(int limit) {
        return devices.list(null, limit).items().stream()
                .map(r -> NewsItem.of("Device", "devices", r))
                .toList();
    }
}
