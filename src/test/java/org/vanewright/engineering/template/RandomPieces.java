package org.vanewright.engineering.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.vanewright.engineering.placement.Arrangement;
import org.vanewright.engineering.placement.ChordPosition;
import org.vanewright.engineering.placement.ConflictPolicy;
import org.vanewright.engineering.placement.DeviceFootprint;
import org.vanewright.engineering.placement.Placement;
import org.vanewright.engineering.placement.Placer;
import org.vanewright.engineering.placement.RowPlan;
import org.vanewright.engineering.placement.TestWings;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.engineering.placement.WingChoice;
import org.vanewright.engineering.section.Sections;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.engineering.wing.WingPanel;
import org.vanewright.engineering.wing.WingShape;

/** Layouts of every kind, by chance but repeatable. */
final class RandomPieces {
    private final Random random;

    RandomPieces(long seed) {
        this.random = new Random(seed);
    }

    /**
     * One row on one wing, with the pieces of both sides.
     *
     * @param words what it is, for the message of a failure
     */
    record Sample(String words, TemplateRow row, Placement placement, List<TemplatePiece> pieces) {}

    Sample next() {
        WingShape wing = wing();
        SurfaceSide side = SurfaceSide.values()[random.nextInt(2)];
        Register register = Register.values()[random.nextInt(3)];
        double fraction = 0.2 + 0.5 * random.nextDouble();
        double spar = fraction < 0.45 ? fraction + 0.2 : fraction - 0.2;
        DeviceFootprint device = device();
        double inner = wing.innerStationMm();
        double length = wing.outerStationMm() - inner;
        double from = inner + 0.4 * length * random.nextDouble();
        double to = from + 0.5 * length * random.nextDouble();
        RowPlan plan = TestWings.with(TestWings.row(0, from, to), d -> {
            d.side = side;
            d.footprint = device;
            d.position = random.nextInt(3) > 0 || register == Register.SPAR_LINE
                    ? new ChordPosition.FractionOfChord(fraction)
                    : new ChordPosition.DistanceAlongSkin(fraction * shortestChordMm(wing));
            d.arrangement = Arrangement.values()[random.nextInt(3)];
            d.angleDeg = 25 * random.nextDouble();
            d.pairGapMm = 40 + 20 * random.nextDouble();
            d.pitchMm = 110 + 120 * random.nextDouble();
            d.wings = random.nextBoolean() ? WingChoice.BOTH_MIRRORED : WingChoice.BOTH_SAME_HAND;
            d.onConflict = ConflictPolicy.values()[random.nextInt(2)];
        });
        TemplateRow row = new TemplateRow(plan, "Random vane", register, register == Register.SPAR_LINE ? spar : 0);
        Placement placement = Placer.place(wing, List.of(plan));
        TemplateLabel label = new TemplateLabel("Random layout", 7, "0123456789abcdef", "Wing", true);
        PlacementTemplate template = new PlacementTemplate(wing, placement, label);
        List<TemplatePiece> pieces = new ArrayList<>();
        for (Wing hand : Wing.values()) {
            pieces.addAll(template.pieces(List.of(row), hand));
            pieces.addAll(template.strips(List.of(row), hand));
        }
        return new Sample(wing.panels() + " " + row, row, placement, pieces);
    }

    private static double shortestChordMm(WingShape wing) {
        return wing.panels().stream()
                .mapToDouble(p -> Math.min(p.innerChordMm(), p.outerChordMm()))
                .min()
                .orElseThrow();
    }

    /** A cylinder, a cone, both, or a twisted and blended panel. */
    private WingShape wing() {
        double inner = 300 + 400 * random.nextDouble();
        double span = 400 + 3000 * random.nextDouble();
        double chord = 500 + 1200 * random.nextDouble();
        double tip = chord * (0.45 + 0.5 * random.nextDouble());
        double sweep = (random.nextDouble() - 0.2) * 0.3 * span;
        var section = Sections.naca(List.of("2412", "0012", "4415", "23015").get(random.nextInt(4)));
        double outer = inner + span;
        WingPanel cylinder = new WingPanel(inner, outer, chord, chord, 0, 0, section, section, 0);
        WingPanel cone = new WingPanel(outer, outer + span, chord, tip, 0, sweep, section, section, 0);
        return new WingShape(
                switch (random.nextInt(4)) {
                    case 0 -> List.of(cylinder);
                    case 1 -> List.of(cone);
                    case 2 -> List.of(cylinder, cone);
                    default ->
                        List.of(new WingPanel(
                                inner, outer, chord, tip, 0, sweep, section, Sections.naca("2410"), -2.5));
                },
                List.of());
    }

    private DeviceFootprint device() {
        double length = 16 + 24 * random.nextDouble();
        double width = 8 + 8 * random.nextDouble();
        return new DeviceFootprint(
                TestWings.rectangle(length, width), List.of(TestWings.rectangle(length - 4, 1.2)), false);
    }
}
