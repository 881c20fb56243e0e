package org.vanewright.layout;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.vanewright.device.DeviceDocument;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.placement.Arrangement;
import org.vanewright.engineering.placement.ChordPosition;
import org.vanewright.engineering.placement.ConflictPolicy;
import org.vanewright.engineering.placement.DeviceFootprint;
import org.vanewright.engineering.placement.RowPlan;
import org.vanewright.engineering.placement.WingChoice;
import org.vanewright.engineering.solid.DeviceDesign;
import org.vanewright.engineering.solid.DeviceDrawing;
import org.vanewright.engineering.template.Register;
import org.vanewright.engineering.template.TemplateRow;

/** Turns a recorded row and its device into what the engineering core places. */
final class RowPlans {
    /** A device is laid out again and again. */
    private static final Cache<DeviceDesign, DeviceFootprint> FOOTPRINTS =
            Caffeine.newBuilder().maximumSize(500).build();

    private RowPlans() {}

    static TemplateRow of(int index, RowDocument row, DeviceDocument device, boolean mirrored) {
        DeviceFootprint footprint = footprint(device.design());
        String path = "rows[" + index + "].";
        RowPlan plan = new RowPlan(
                index,
                Objects.requireNonNull(row.name()),
                Objects.requireNonNull(row.side()),
                Objects.requireNonNull(row.fromMm()),
                Objects.requireNonNull(row.toMm()),
                position(row),
                Objects.requireNonNull(row.arrangement()),
                angleDeg(path, row, device),
                Objects.requireNonNull(row.pitchMm()),
                gapMm(path, row, footprint),
                wings(path, row, mirrored),
                row.onConflict() == null ? ConflictPolicy.MOVE : row.onConflict(),
                footprint);
        return new TemplateRow(
                plan,
                device.name(),
                row.register() == null ? Register.LEADING_EDGE : row.register(),
                row.registerChordFraction() == null ? 0 : row.registerChordFraction());
    }

    /** A surface without a mirror image, such as a fin, carries its row once. */
    private static WingChoice wings(String path, RowDocument row, boolean mirrored) {
        if (row.wings() == null) {
            return mirrored ? WingChoice.BOTH_MIRRORED : WingChoice.RIGHT_ONLY;
        }
        if (!mirrored && row.wings() != WingChoice.RIGHT_ONLY) {
            throw new InvalidInputException(new FieldProblem(
                    path + "wings",
                    row.wings().name(),
                    "absent or " + WingChoice.RIGHT_ONLY + ", because this surface has no mirror image"));
        }
        return row.wings();
    }

    static DeviceFootprint footprint(DeviceDesign design) {
        return FOOTPRINTS.get(design, RowPlans::drawn);
    }

    private static DeviceFootprint drawn(DeviceDesign design) {
        List<List<Point2>> outlines = DeviceDrawing.planOutline(design);
        return new DeviceFootprint(outlines.get(0), outlines.subList(1, outlines.size()), design.pair() != null);
    }

    private static ChordPosition position(RowDocument row) {
        return row.arcDistanceMm() != null
                ? new ChordPosition.DistanceAlongSkin(row.arcDistanceMm())
                : new ChordPosition.FractionOfChord(Objects.requireNonNull(row.chordFraction()));
    }

    /** A device that holds a pair brings its own angle; its sign must agree with the arrangement. */
    private static double angleDeg(String path, RowDocument row, DeviceDocument device) {
        if (device.pair() == null) {
            return required(path + "angleDeg", row.angleDeg(), "an angle in degrees, toe-in positive");
        }
        double own = Objects.requireNonNull(device.pair().angleDeg());
        Arrangement made = Arrangement.ofPair(own);
        if (row.arrangement() != made) {
            throw new InvalidInputException(new FieldProblem(
                    path + "arrangement",
                    String.valueOf(row.arrangement()),
                    made + ", because that is what this pair of vanes makes"));
        }
        return Math.abs(own);
    }

    private static double gapMm(String path, RowDocument row, DeviceFootprint footprint) {
        boolean needed = Objects.requireNonNull(row.arrangement()).paired() && !footprint.pairOnOneBase();
        return needed ? required(path + "pairGapMm", row.pairGapMm(), "a distance between the two bases of a pair") : 0;
    }

    private static double required(String field, @Nullable Double value, String allowed) {
        if (value == null) {
            throw new InvalidInputException(new FieldProblem(field, "missing", allowed));
        }
        return value;
    }
}
