package org.vanewright.device.web;

import io.swagger.v3.oas.annotations.tags.Tag;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.vanewright.device.DeviceDocument;
import org.vanewright.device.DeviceService;
import org.vanewright.record.web.RecordApi;

/** Devices as JSON. */
@RestController
@RequestMapping("/api/v1/devices")
@Tag(name = "Devices", description = "The printed pieces that clubs share, as immutable revisions.")
class DeviceApi extends RecordApi<DeviceDocument> {
    DeviceApi(DeviceService devices) {
        super(devices);
    }
}
