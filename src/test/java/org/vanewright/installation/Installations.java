package org.vanewright.installation;

import java.util.List;
import org.vanewright.device.PrintMaterial;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.record.RevisionRef;

/** Installations to test with. */
public final class Installations {
    private Installations() {}

    public static DeviceAt at(Wing wing, int device) {
        return new DeviceAt("Wing", wing, device);
    }

    /** One of the demonstration's layout, with two measured devices and one left off. */
    public static InstallationDocument installation(String name) {
        return new InstallationDocument(
                name,
                null,
                new RevisionRef("low-wing-pairs-over-the-taper", 1),
                null,
                "Foam tape, 1.1 mm",
                null,
                PrintMaterial.ABS,
                "2026-04-18",
                new ConditionsDocument(21.5, 48.0, SurfaceFinish.GLOSS_PAINT),
                "Owner",
                List.of(at(Wing.LEFT, 3)),
                TolerancesDocument.NONE,
                List.of(
                        new SampleDocument(at(Wing.LEFT, 1), 190.0, -15.5, 10.1),
                        new SampleDocument(at(Wing.RIGHT, 1), null, null, 9.0)),
                false,
                List.of(),
                List.of());
    }
}
