package org.vanewright.engineering.placement;

import java.util.ArrayList;
import java.util.List;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.section.Section;
import org.vanewright.engineering.section.Sections;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.engineering.wing.KeepOut;
import org.vanewright.engineering.wing.WingPanel;
import org.vanewright.engineering.wing.WingShape;

/** Wings and rows that several tests use. */
public final class TestWings {
    public static final Section NACA_2412 = Sections.naca("2412");

    private TestWings() {}

    /** Constant chord 1,200 mm from span station 600 to 4,500 mm. */
    public static WingShape constantChord(KeepOut... keepOuts) {
        return new WingShape(
                List.of(new WingPanel(600, 4500, 1200, 1200, 0, 0, NACA_2412, NACA_2412, 0)), List.of(keepOuts));
    }

    /** A constant centre panel to 1,500 mm and a tapered outer one to 4,200 mm, leading edge swept 120 mm. */
    public static WingShape tapered(KeepOut... keepOuts) {
        return new WingShape(
                List.of(
                        new WingPanel(500, 1500, 1400, 1400, 0, 0, NACA_2412, NACA_2412, 0),
                        new WingPanel(1500, 4200, 1400, 800, 0, 120, NACA_2412, NACA_2412, 0)),
                List.of(keepOuts));
    }

    /** Base 26 × 12 mm, square corners, one vane of 20 × 1.2 mm. */
    public static DeviceFootprint device() {
        return new DeviceFootprint(rectangle(26, 12), List.of(rectangle(20, 1.2)), false);
    }

    public static List<Point2> rectangle(double length, double width) {
        double a = length / 2;
        double b = width / 2;
        return List.of(new Point2(-a, -b), new Point2(a, -b), new Point2(a, b), new Point2(-a, b));
    }

    /** A co-rotating row at 8 % chord, toe-in 15 degrees, pitch 60 mm. */
    public static RowPlan row(int index, double fromMm, double toMm) {
        return new RowPlan(
                index,
                "Row " + (index + 1),
                SurfaceSide.UPPER,
                fromMm,
                toMm,
                new ChordPosition.FractionOfChord(0.08),
                Arrangement.CO_ROTATING,
                15,
                60,
                0,
                WingChoice.BOTH_MIRRORED,
                ConflictPolicy.MOVE,
                device());
    }

    /** The row changed in one or more ways. */
    public static RowPlan with(RowPlan row, Change... changes) {
        Draft draft = new Draft(row);
        for (Change change : changes) {
            change.apply(draft);
        }
        return draft.build();
    }

    /** One change of a row. */
    public interface Change {
        void apply(Draft draft);
    }

    /** A row being changed. */
    public static final class Draft {
        public SurfaceSide side;
        public ChordPosition position;
        public Arrangement arrangement;
        public double angleDeg;
        public double pitchMm;
        public double pairGapMm;
        public WingChoice wings;
        public ConflictPolicy onConflict;
        public DeviceFootprint footprint;
        private final RowPlan row;

        Draft(RowPlan row) {
            this.row = row;
            side = row.side();
            position = row.position();
            arrangement = row.arrangement();
            angleDeg = row.angleDeg();
            pitchMm = row.pitchMm();
            pairGapMm = row.pairGapMm();
            wings = row.wings();
            onConflict = row.onConflict();
            footprint = row.footprint();
        }

        RowPlan build() {
            return new RowPlan(
                    row.index(),
                    row.name(),
                    side,
                    row.fromMm(),
                    row.toMm(),
                    position,
                    arrangement,
                    angleDeg,
                    pitchMm,
                    pairGapMm,
                    wings,
                    onConflict,
                    footprint);
        }
    }

    public static List<Double> stationsMm(List<Station> stations) {
        List<Double> all = new ArrayList<>();
        stations.forEach(s -> all.add(s.stationMm()));
        return all;
    }
}
