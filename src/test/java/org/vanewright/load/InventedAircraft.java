package org.vanewright.load;

import java.util.ArrayList;
import java.util.List;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.airframe.KeepOutDocument;
import org.vanewright.airframe.KeepOutSide;
import org.vanewright.airframe.OperatingBasis;
import org.vanewright.airframe.PanelDocument;
import org.vanewright.airframe.SurfaceDocument;
import org.vanewright.engineering.section.SectionSpec;

/** Airframes: one wing of one or two panels with a few keep-outs, and a stabiliser. */
final class InventedAircraft {
    static final String WING = "Wing";
    static final String STABILISER = "Stabiliser";

    private static final List<String> KINDS = List.of(
            "high wing",
            "low wing",
            "mid wing",
            "strut-braced high wing",
            "parasol",
            "folding wing",
            "tandem two-seat",
            "side-by-side two-seat",
            "single-seat",
            "motor glider",
            "biplane top wing",
            "tail-dragger");
    private static final List<String> SECTIONS =
            List.of("4412", "2412", "23012", "4415", "2415", "23015", "4409", "2409", "23018", "4418");

    private final long seed;

    InventedAircraft(long seed) {
        this.seed = seed;
    }

    AirframeDocument airframe(int number) {
        Chance chance = new Chance(seed, "airframe", number);
        String place = Invention.place(chance);
        String kind = chance.of(KINDS);
        double stall = chance.between(28, 48, 0.5);
        double maximum = chance.between(300, 750, 5);
        return new AirframeDocument(
                Invention.name(place + " " + kind, number),
                "Invented " + kind + " of the invented strip at " + Invention.place(chance) + ".",
                chance.of(List.of(OperatingBasis.values())),
                new AirframeDocument.Masses(Chance.rounded(Math.floor(maximum * 0.56)), maximum),
                new AirframeDocument.Speeds(
                        stall - 3, stall, stall * 2, stall * 3, Chance.tenth(stall * 1.35), stall * 2 - 2),
                chance.between(9, 16, 0.1),
                List.of(wing(chance), stabiliser()),
                true);
    }

    private static SurfaceDocument wing(Chance chance) {
        double inner = chance.between(300, 600, 10);
        double outer = chance.between(3600, 5200, 50);
        double chord = chance.between(850, 1900, 10);
        SectionSpec section = SectionSpec.naca(chance.of(SECTIONS));
        List<PanelDocument> panels = new ArrayList<>();
        if (chance.percent(50)) {
            panels.add(panel(inner, outer, chord, chord, 0, section));
        } else {
            double kink = Math.rint((inner + outer) / 20) * 10;
            double tip = Math.rint(chord * 0.7);
            panels.add(panel(inner, kink, chord, chord, 0, section));
            panels.add(panel(kink, outer, chord, tip, Math.rint(chord * 0.1), section));
        }
        double filler = inner + chance.between(300, 600, 10);
        double warning = outer - chance.between(900, 1400, 10);
        return new SurfaceDocument(
                WING,
                SurfaceDocument.Kind.WING,
                panels,
                List.of(
                        new KeepOutDocument(filler, filler + 140, KeepOutSide.UPPER, "Fuel filler and vent"),
                        new KeepOutDocument(warning, warning + 120, KeepOutSide.BOTH, "Stall-warning vane")));
    }

    private static PanelDocument panel(
            double from, double to, double innerChord, double outerChord, double offset, SectionSpec section) {
        return new PanelDocument(from, to, innerChord, outerChord, 0.0, offset, section, section, 0.0);
    }

    private static SurfaceDocument stabiliser() {
        SectionSpec section = SectionSpec.naca("0009");
        return new SurfaceDocument(
                STABILISER,
                SurfaceDocument.Kind.HORIZONTAL_STABILISER,
                List.of(panel(0, 1300, 820, 820, 0, section)),
                List.of());
    }
}
