package org.vanewright.inspection;

import java.util.List;
import org.vanewright.installation.DeviceAt;
import org.vanewright.record.RevisionRef;

/** Inspections to test with. */
public final class Inspections {
    private Inspections() {}

    public static InspectionDocument inspection(
            String name, RevisionRef installation, String on, double hours, LossDocument... losses) {
        return new InspectionDocument(
                name, null, installation, on, hours, List.of(losses), false, List.of(), List.of());
    }

    public static LossDocument lost(DeviceAt at, LossCause cause) {
        return new LossDocument(at, LossState.MISSING, cause);
    }
}
