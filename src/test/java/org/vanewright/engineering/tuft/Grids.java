package org.vanewright.engineering.tuft;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.vanewright.engineering.section.Section;
import org.vanewright.engineering.section.SectionSpec;
import org.vanewright.engineering.section.Sections;
import org.vanewright.engineering.wing.WingPanel;

/** Surfaces and grids drawn by chance. */
final class Grids {
    private static final Section SECTION = Sections.of(SectionSpec.naca("23012"));

    private Grids() {}

    static WingPanel panel(double from, double to, double innerChord, double outerChord) {
        return new WingPanel(from, to, innerChord, outerChord, 0, 100, SECTION, SECTION, 0);
    }

    /** One to three panels that taper as they like. */
    static List<WingPanel> wing(Random chance) {
        List<WingPanel> panels = new ArrayList<>();
        double station = chance.nextDouble() * 600;
        double chord = 800 + chance.nextDouble() * 900;
        for (int i = 0; i <= chance.nextInt(3); i++) {
            double tip = station + 300 + chance.nextDouble() * 2500;
            double outer = chord * (0.4 + 0.6 * chance.nextDouble());
            panels.add(panel(station, tip, chord, outer));
            station = tip;
            chord = outer;
        }
        return panels;
    }

    static List<Double> between(Random chance, double low, double high, int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> low + (high - low) * (i + 0.05 + 0.9 * chance.nextDouble()) / count)
                .toList();
    }

    static TuftGrid grid(Random chance, List<WingPanel> panels, Wings wings) {
        double root = panels.get(0).innerStationMm();
        double tip = panels.get(panels.size() - 1).outerStationMm();
        return TuftGrid.of(
                panels,
                between(chance, root, tip, 1 + chance.nextInt(8)),
                between(chance, 0, 1, 1 + chance.nextInt(6)),
                wings);
    }

    static List<TuftState> states(Random chance, int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> TuftState.values()[chance.nextInt(4)])
                .toList();
    }
}
