package org.vanewright.campaign;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.campaign.InstrumentDocument.Quantity;
import org.vanewright.record.RevisionRef;

/** Campaigns to test with. */
public final class Campaigns {
    private Campaigns() {}

    public static PlanDocument plan(Measure measure, FlyingOrder order) {
        return new PlanDocument(
                new RevisionRef("quillmere-tapered-low-wing", 1),
                measure,
                List.of(
                        new ConfigurationDocument("A", "Unmodified", null),
                        new ConfigurationDocument("B", "One row", new RevisionRef("low-wing-pairs-over-the-taper", 1))),
                new ConditionsDocument("up", "idle", "forward", 3000.0, 6000.0, 560.0),
                List.of(new InstrumentDocument("Dial", Quantity.AIRSPEED, 1.0, "2026-03-14")),
                List.of(new RoleDocument("Pilot", null)),
                new RepeatsDocument(0.8, 1.2, null, null, 8, 1, order, 4),
                CalibrationDocument.NONE);
    }

    public static CampaignDocument campaign(Measure measure, FlyingOrder order, List<PointDocument> points) {
        return new CampaignDocument("Campaign", null, plan(measure, order), false).withPoints(points);
    }

    /** A stall at 4,000 ft and standard temperature. */
    public static PointDocument stall(
            String id, String key, @Nullable Integer block, double indicatedKt, double massKg, @Nullable Double rate) {
        return point(id, PointKind.STALL, key, block, indicatedKt, massKg, rate, null, null, List.of());
    }

    public static PointDocument cruise(String id, String key, double indicatedKt, double massKg, double power) {
        return point(id, PointKind.CRUISE, key, null, indicatedKt, massKg, null, power, null, List.of());
    }

    public static PointDocument climb(String id, String key, double indicatedKt, double massKg, double rate) {
        return point(id, PointKind.CLIMB, key, null, indicatedKt, massKg, null, 100.0, rate, List.of());
    }

    public static PointDocument run(String id, double indicatedKt, List<LegDocument> legs) {
        return point(id, PointKind.AIRSPEED, "A", null, indicatedKt, null, null, null, null, legs);
    }

    private static PointDocument point(
            String id,
            PointKind kind,
            String key,
            @Nullable Integer block,
            double indicatedKt,
            @Nullable Double massKg,
            @Nullable Double rate,
            @Nullable Double power,
            @Nullable Double climb,
            List<LegDocument> legs) {
        return new PointDocument(
                id,
                kind,
                key,
                1,
                block,
                null,
                indicatedKt,
                4000.0,
                7.0752,
                massKg,
                null,
                null,
                null,
                rate,
                null,
                null,
                power,
                climb,
                legs,
                null,
                PointSource.TYPED);
    }

    /** Stalls of one configuration, one in each block, at the standard mass. */
    public static List<PointDocument> stalls(String key, double... indicatedKt) {
        List<PointDocument> points = new ArrayList<>();
        for (int i = 0; i < indicatedKt.length; i++) {
            points.add(stall(key + i, key, i + 1, indicatedKt[i], 560, null));
        }
        return points;
    }
}
