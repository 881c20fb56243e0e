package org.vanewright.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.airframe.AirframeDocument.Speeds;
import org.vanewright.device.DeviceDocument;
import org.vanewright.engineering.air.Airspeeds;
import org.vanewright.engineering.placement.PlacementTolerance;
import org.vanewright.engineering.placement.Station;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.engineering.solid.DesignRules;
import org.vanewright.engineering.solid.DeviceDesign;
import org.vanewright.record.Revision;

/**
 * Where one device is to sit and how far it may be off.
 *
 * @param surface name of the surface
 * @param wing left or right
 * @param device number, from the root outward on that wing and surface
 * @param row counts from 1
 * @param spanStationMm from the aircraft's centre line
 * @param arcFromLeadingEdgeMm along the skin, nominal
 * @param angleDeg toe-in positive, nominal
 * @param heightMm of the vane above its base's upper face, nominal
 * @param tolerance for the three
 */
public record StationTolerance(
        String surface,
        Wing wing,
        int device,
        int row,
        double spanStationMm,
        double arcFromLeadingEdgeMm,
        double angleDeg,
        double heightMm,
        PlacementTolerance tolerance) {
    /** Where the airframe states no speed: about 50 kt. */
    private static final double USUAL_SPEED_MPS = 25;

    private static final double SLOWEST_MPS = 5;
    private static final double FASTEST_MPS = 150;
    private static final double OVER_STALL = 1.3;

    /** Every station of a layout, by surface, wing and number. */
    public static List<StationTolerance> of(LayoutPlan plan) {
        double speed = speedMps(plan.airframe());
        Map<Integer, PlacementTolerance.Vane> vanes = new HashMap<>();
        List<StationTolerance> all = new ArrayList<>();
        for (LayoutPlan.SurfacePlan surface : plan.surfaces()) {
            for (Station s : surface.placement().stations()) {
                PlacementTolerance.Vane known = vanes.computeIfAbsent(
                        s.row(), row -> vane(plan.devices().get(row).content()));
                all.add(of(surface.name(), s, known, speed));
            }
        }
        return all;
    }

    private static StationTolerance of(String surface, Station s, PlacementTolerance.Vane known, double speedMps) {
        double turned = known.angleDeg() == 0 ? s.angleDeg() : known.angleDeg();
        PlacementTolerance.Vane here =
                new PlacementTolerance.Vane(known.heightMm(), known.lengthMm(), turned, known.baseLengthMm());
        return new StationTolerance(
                surface,
                s.wing(),
                s.number(),
                s.row() + 1,
                s.stationMm(),
                s.arcMm(),
                s.angleDeg(),
                known.heightMm(),
                PlacementTolerance.of(here, s.arcMm(), speedMps, PlacementTolerance.USUAL_SHARE));
    }

    /** The angle is that of the pair's vanes on their base, 0 for a single one. */
    private static PlacementTolerance.Vane vane(DeviceDocument device) {
        DeviceDesign full = DesignRules.withDefaults(device.design());
        DeviceDesign.Vane vane = Objects.requireNonNull(full.vane());
        DeviceDesign.Base base = Objects.requireNonNull(full.base());
        DeviceDesign.Pair pair = full.pair();
        return new PlacementTolerance.Vane(
                Objects.requireNonNull(vane.heightMm()),
                Objects.requireNonNull(vane.lengthMm()),
                pair == null ? 0 : Objects.requireNonNull(pair.angleDeg()),
                Objects.requireNonNull(base.lengthMm()));
    }

    /** The speed that devices are fitted for: approach, or 1.3 times the stall as the airframe states it. */
    static double speedMps(Revision<AirframeDocument> airframe) {
        Speeds speeds = airframe.content().speeds();
        double knots = speeds == null
                ? 0
                : first(
                        speeds.approachKt(),
                        1,
                        first(speeds.vs0Kt(), OVER_STALL, first(speeds.vs1Kt(), OVER_STALL, 0)));
        double mps = knots == 0 ? USUAL_SPEED_MPS : knots * Airspeeds.METRES_PER_SECOND_PER_KNOT;
        return Math.min(FASTEST_MPS, Math.max(SLOWEST_MPS, mps));
    }

    private static double first(@Nullable Double given, double factor, double otherwise) {
        return given == null ? otherwise : given * factor;
    }
}
