package org.vanewright.load;

import java.util.List;
import java.util.Locale;
import org.vanewright.device.DeviceDocument;
import org.vanewright.engineering.solid.DeviceDesign;
import org.vanewright.engineering.solid.DeviceDesign.Planform;

/** Devices: single vanes of every planform, and every eighth a pair on one base. */
final class InventedVanes {
    private static final List<String> MANNERS =
            List.of("thin", "stout", "swept", "low-drag", "glued", "taped", "two-colour", "hangar", "winter", "trial");

    private final long seed;

    InventedVanes(long seed) {
        this.seed = seed;
    }

    static boolean isPair(int number) {
        return number % 8 == 7;
    }

    DeviceDocument device(int number) {
        Chance chance = new Chance(seed, "device", number);
        Planform planform = Planform.values()[number % Planform.values().length];
        double height = chance.between(5, 18, 0.5);
        double length = Chance.rounded(Math.rint(height * chance.between(2, 3, 0.25)));
        DeviceDesign.Pair pair = isPair(number) ? new DeviceDesign.Pair(chance.between(12, 18, 1), length) : null;
        String words = planform.name().toLowerCase(Locale.ROOT).replace('_', ' ') + (pair == null ? " vane" : " pair");
        return new DeviceDocument(
                Invention.name(Invention.place(chance) + " " + chance.of(MANNERS) + " " + words, number),
                "Invented for trials at " + Invention.place(chance) + ".",
                new DeviceDesign.Vane(
                        planform,
                        height,
                        length,
                        1.2,
                        planform == Planform.SWEPT_TRAPEZIUM ? Chance.rounded(Math.rint(length * 0.6)) : null,
                        DeviceDesign.EdgeTreatment.ROUNDED,
                        DeviceDesign.EdgeTreatment.SQUARE,
                        null,
                        0.6,
                        null,
                        null),
                pair,
                new DeviceDesign.Base(
                        DeviceDesign.BaseOutline.ROUNDED_RECTANGLE,
                        length + 10,
                        pair == null ? 16.0 : Math.rint(length * 1.6 + 14),
                        1.0,
                        4.0,
                        0.3,
                        null,
                        null),
                true,
                null,
                1040.0,
                true);
    }
}
