package org.vanewright.engineering.gauge;

import java.util.List;
import java.util.Random;
import org.vanewright.engineering.placement.Arrangement;
import org.vanewright.engineering.placement.ChordPosition;
import org.vanewright.engineering.placement.Placement;
import org.vanewright.engineering.placement.Placer;
import org.vanewright.engineering.placement.RowPlan;
import org.vanewright.engineering.placement.TestWings;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.engineering.placement.WingChoice;
import org.vanewright.engineering.section.Section;
import org.vanewright.engineering.section.Sections;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.engineering.solid.Mesh;
import org.vanewright.engineering.template.Register;
import org.vanewright.engineering.template.TemplateRow;
import org.vanewright.engineering.wing.WingPanel;
import org.vanewright.engineering.wing.WingShape;

/** A wing with one row on it, and its gauges. */
record GaugeCase(WingShape wing, TemplateRow row, Placement placement, GaugeSettings settings) {
    static GaugeCase of(WingShape wing, RowPlan row) {
        return of(wing, row, GaugeSettings.USUAL);
    }

    static GaugeCase of(WingShape wing, RowPlan row, GaugeSettings settings) {
        return new GaugeCase(
                wing,
                new TemplateRow(row, "Vane", Register.LEADING_EDGE, 0),
                Placer.place(wing, List.of(row)),
                settings);
    }

    RowGauges gauges(Wing side) {
        return GaugePlanner.plan(wing, placement, row, side, settings);
    }

    Mesh solid(RowGauges gauges, Gauge gauge) {
        return GaugeSolid.of(wing, row, gauges, gauge, 3);
    }

    /** Straight tapered, of one section, with a row at random; the same seed gives the same case. */
    static GaugeCase random(Random random) {
        Section section =
                Sections.naca(List.of("2412", "0012", "4415", "23012", "0009").get(random.nextInt(5)));
        double chord = 700 + 1000 * random.nextDouble();
        double tip = chord * (0.5 + 0.6 * random.nextDouble());
        double sweep = -100 + 300 * random.nextDouble();
        WingShape wing =
                new WingShape(List.of(new WingPanel(400, 3900, chord, tip, 0, sweep, section, section, 0)), List.of());
        double from = 600 + 800 * random.nextDouble();
        RowPlan row = TestWings.with(TestWings.row(0, from, from + 400 + 1500 * random.nextDouble()), d -> {
            d.arrangement = Arrangement.values()[random.nextInt(3)];
            d.angleDeg = 5 + 15 * random.nextDouble();
            d.pairGapMm = 26 + 10 * random.nextDouble();
            d.pitchMm = 80 + 60 * random.nextDouble();
            d.side = SurfaceSide.values()[random.nextInt(2)];
            d.wings = WingChoice.values()[random.nextInt(2)];
            d.position = random.nextBoolean()
                    ? new ChordPosition.FractionOfChord(0.03 + 0.08 * random.nextDouble())
                    : new ChordPosition.DistanceAlongSkin(20 + 150 * random.nextDouble());
        });
        return of(
                wing,
                row,
                new GaugeSettings(
                        0.4 * random.nextDouble(),
                        0.15 + 0.5 * random.nextDouble(),
                        0.5 + random.nextDouble(),
                        2 + 2 * random.nextDouble(),
                        40 + 60 * random.nextDouble(),
                        15 + 30 * random.nextDouble()));
    }
}
