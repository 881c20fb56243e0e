package org.vanewright.bond;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.vanewright.adhesive.AdhesiveDocument;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.device.DeviceDocument;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.engineering.template.TemplateRow;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutPlan;
import org.vanewright.layout.LayoutPlanner;
import org.vanewright.record.Revision;

/** Checks the bond of a layout's devices. */
@Service
public class BondService {
    private final LayoutPlanner planner;

    BondService(LayoutPlanner planner) {
        this.planner = planner;
    }

    /** @throws org.vanewright.engineering.input.InvalidInputException naming each field of the query that is unusable */
    public LayoutBond of(Revision<LayoutDocument> layout, Revision<AdhesiveDocument> adhesive, BondQuery query) {
        LayoutPlan plan = planner.plan(layout.content());
        BondConditions conditions = BondConditions.of(query, plan.airframe().content(), adhesive.content());
        Map<Double, String> speeds = speeds(plan.airframe().content(), conditions.speedKt());
        List<RowBond> rows = new ArrayList<>();
        for (LayoutPlan.SurfacePlan surface : plan.surfaces()) {
            for (TemplateRow row : surface.rows()) {
                int count = count(surface, row);
                if (count > 0) {
                    rows.add(row(plan, row, count, adhesive.content(), conditions, speeds));
                }
            }
        }
        rows.sort((a, b) -> Integer.compare(a.index(), b.index()));
        return new LayoutBond(layout, plan.airframe(), adhesive, conditions, List.copyOf(rows));
    }

    private static int count(LayoutPlan.SurfacePlan surface, TemplateRow row) {
        int index = row.plan().index();
        return surface.placement().on(Wing.LEFT, index).size()
                + surface.placement().on(Wing.RIGHT, index).size();
    }

    private static RowBond row(
            LayoutPlan plan,
            TemplateRow row,
            int count,
            AdhesiveDocument adhesive,
            BondConditions conditions,
            Map<Double, String> speeds) {
        int index = row.plan().index();
        Revision<DeviceDocument> device = plan.devices().get(index);
        RowBonds bonds = new RowBonds(device.content(), row.plan().angleDeg(), adhesive, conditions);
        BondCase air = bonds.air(conditions.speedKt());
        BondCase knock = bonds.knock();
        List<RowBond.AtSpeed> along = new ArrayList<>();
        speeds.forEach((speed, name) -> along.add(new RowBond.AtSpeed(name, speed, bonds.air(speed))));
        return new RowBond(
                index,
                row.plan().name(),
                device,
                count,
                bonds.areaMm2(),
                bonds.angleDeg(),
                bonds.side(conditions.speedKt()).normalForceCoefficient(),
                air,
                knock,
                List.copyOf(along),
                conditions.speedKt() * Math.sqrt(knock.peakTensionPa() / air.peakTensionPa()));
    }

    /** Names by speed; one that several share carries all their names. */
    private static Map<Double, String> speeds(AirframeDocument airframe, double askedKt) {
        Map<Double, String> speeds = new TreeMap<>();
        AirframeDocument.Speeds given = airframe.speeds();
        if (given != null) {
            add(speeds, given.vs1Kt(), "stall, clean");
            add(speeds, given.approachKt(), "approach");
            add(speeds, given.cruiseKt(), "cruise");
            add(speeds, given.vaKt(), "manoeuvring");
            add(speeds, given.vneKt(), "never exceed");
        }
        speeds.putIfAbsent(askedKt, "as asked");
        return speeds;
    }

    private static void add(Map<Double, String> speeds, @Nullable Double speedKt, String name) {
        if (speedKt != null && speedKt > 0) {
            speeds.merge(speedKt, name, (a, b) -> a + ", " + b);
        }
    }
}
