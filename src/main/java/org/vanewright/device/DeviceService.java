package org.vanewright.device;

import java.util.List;
import org.springframework.stereotype.Service;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.record.RecordDesk;
import org.vanewright.record.RecordService;

/** Devices and their revisions. */
@Service
public class DeviceService extends RecordService<DeviceDocument> {
    DeviceService(DeviceRepository devices, RecordDesk desk) {
        super("device", "devices", devices, desk);
    }

    @Override
    protected List<FieldProblem> problems(DeviceDocument device) {
        return DeviceRules.check(device);
    }
}
