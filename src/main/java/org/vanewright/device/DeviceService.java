package org.vanewright.device;

import java.util.List;
import org.springframework.stereotype.Service;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.record.RecordService;
import org.vanewright.record.WritePolicy;

/** Devices and their revisions. */
@Service
public class DeviceService extends RecordService<DeviceDocument> {
    DeviceService(DeviceRepository devices, WritePolicy policy) {
        super("device", devices, policy);
    }

    @Override
    protected List<FieldProblem> problems(DeviceDocument device) {
        return DeviceRules.check(device);
    }
}
