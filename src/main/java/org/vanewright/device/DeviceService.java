package org.vanewright.device;

import java.util.List;
import java.util.stream.Stream;
import org.springframework.stereotype.Service;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.photograph.Photographs;
import org.vanewright.record.RecordDesk;
import org.vanewright.record.RecordService;

/** Devices and their revisions. */
@Service
public class DeviceService extends RecordService<DeviceDocument> {
    private final Photographs photographs;

    DeviceService(DeviceRepository devices, Photographs photographs, RecordDesk desk) {
        super("device", "devices", devices, desk);
        this.photographs = photographs;
    }

    @Override
    protected List<FieldProblem> problems(DeviceDocument device) {
        return Stream.concat(DeviceRules.check(device).stream(), photographs.missing(device.photographs()).stream())
                .toList();
    }
}
