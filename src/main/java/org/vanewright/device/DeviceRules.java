package org.vanewright.device;

import java.util.List;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.solid.DesignRules;
import org.vanewright.record.photograph.PhotographRules;
import org.vanewright.record.provenance.ProvenanceRules;

/** What must hold of a device: a name beside a design that can be made. */
public final class DeviceRules {
    private static final double MIN_DENSITY_KG_M3 = 100;
    private static final double MAX_DENSITY_KG_M3 = 23_000;

    private DeviceRules() {}

    public static List<FieldProblem> check(DeviceDocument device) {
        Checks checks = new Checks();
        checks.text("name", device.name(), 120);
        checks.optionalText("description", device.description(), 4_000);
        checks.optionalRange("densityKgM3", device.densityKgM3(), MIN_DENSITY_KG_M3, MAX_DENSITY_KG_M3, "kg/m³");
        DesignRules.check(device.design()).forEach(checks::add);
        ProvenanceRules.check(device, device.provenance()).forEach(checks::add);
        PhotographRules.check(device.photographs()).forEach(checks::add);
        return checks.problems();
    }
}
