package org.vanewright.load;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.vanewright.device.PrintMaterial;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.inspection.InspectionDocument;
import org.vanewright.inspection.LossCause;
import org.vanewright.inspection.LossDocument;
import org.vanewright.inspection.LossState;
import org.vanewright.installation.ConditionsDocument;
import org.vanewright.installation.DeviceAt;
import org.vanewright.installation.InstallationDocument;
import org.vanewright.installation.SurfaceFinish;
import org.vanewright.installation.TolerancesDocument;

/** Installations of layouts, and what inspections found of them. */
final class InventedRetention {
    private static final List<String> ADHESIVES = List.of(
            "foam tape, 1.1 mm",
            "foam tape, 0.6 mm",
            "clear gel-like tape",
            "thin double-sided tape",
            "epoxy paste",
            "flexible glue");
    private static final LocalDate FIRST_DAY = LocalDate.of(2016, 2, 1);
    private static final int DEVICES_LOST_OF = 8;

    private final CatalogueSize size;
    private final InventedLayouts layouts;

    InventedRetention(CatalogueSize size) {
        this.size = size;
        this.layouts = new InventedLayouts(size);
    }

    private static LocalDate installedOn(int number) {
        return FIRST_DAY.plusDays(number % 3000);
    }

    InstallationDocument installation(int number) {
        Chance chance = new Chance(size.seed(), "installation", number);
        int layout = (int) ((long) number * size.layouts() / size.installations());
        return new InstallationDocument(
                Invention.name(Invention.place(chance) + " set, put on", number),
                "Invented: wiped, dried and pressed on at " + Invention.place(chance) + ".",
                Invention.ref(layouts.layout(layout).name()),
                null,
                chance.of(ADHESIVES),
                null,
                chance.of(List.of(PrintMaterial.values())),
                installedOn(number).toString(),
                new ConditionsDocument(
                        chance.between(12, 28, 0.5),
                        chance.between(35, 70, 1),
                        chance.of(List.of(SurfaceFinish.values()))),
                "Owner",
                List.of(),
                new TolerancesDocument(null, null, null),
                List.of(),
                true,
                List.of(),
                List.of());
    }

    /** Inspections go round the installations, each later than the one before. */
    InspectionDocument inspection(int number) {
        Chance chance = new Chance(size.seed(), "inspection", number);
        int installation = number % size.installations();
        int round = 1 + number / size.installations();
        InstallationDocument seen = installation(installation);
        List<LossDocument> losses = new ArrayList<>();
        if (chance.percent(30)) {
            int device = 1 + (installation + round) % DEVICES_LOST_OF;
            losses.add(new LossDocument(
                    new DeviceAt(InventedAircraft.WING, chance.of(List.of(Wing.values())), device),
                    chance.of(List.of(LossState.values())),
                    chance.of(List.of(LossCause.values()))));
        }
        return new InspectionDocument(
                Invention.name("Inspection " + round + " of " + seen.name().replaceFirst(" \\d+$", ""), number),
                "Invented: each device pulled with two fingers.",
                Invention.ref(seen.name()),
                installedOn(installation).plusDays(30L * round).toString(),
                Chance.tenth(12.0 * round + chance.between(0, 5, 0.5)),
                losses,
                true,
                List.of(),
                List.of());
    }
}
