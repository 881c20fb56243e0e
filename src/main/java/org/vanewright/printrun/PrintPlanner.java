package org.vanewright.printrun;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.vanewright.device.DeviceDocument;
import org.vanewright.device.DeviceSolids;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.printing.PieceMaterial;
import org.vanewright.engineering.solid.BuildPlate;
import org.vanewright.engineering.solid.DesignRules;
import org.vanewright.engineering.solid.DeviceDesign;
import org.vanewright.engineering.solid.Mesh;
import org.vanewright.engineering.solid.Plate;
import org.vanewright.layout.BaseFit;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutPlan;
import org.vanewright.layout.LayoutPlanner;
import org.vanewright.layout.StationRow;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/** Works out what has to be printed for a layout. */
@Component
public class PrintPlanner {
    private final LayoutPlanner layouts;
    private final DeviceSolids solids;

    PrintPlanner(LayoutPlanner layouts, DeviceSolids solids) {
        this.layouts = layouts;
        this.solids = solids;
    }

    /** What two pieces share that come from one solid. */
    private record Kind(RevisionRef device, @Nullable Double undersideRadiusMm) {}

    private static final class Need {
        private final List<String> rows = new ArrayList<>();
        private final Revision<DeviceDocument> device;
        private int fitted;

        private Need(Revision<DeviceDocument> device) {
            this.device = device;
        }
    }

    /** @throws InvalidInputException where a piece does not fit the bed, or the layout cannot be placed */
    public PrintPlan plan(LayoutDocument layout, PrintPlanQuery query) {
        LayoutPlan plan = layouts.plan(layout);
        List<PrintPlan.Batch> batches = new ArrayList<>();
        needs(layout, plan, query.shaped()).forEach((kind, need) -> batches.add(batch(kind, need, query)));
        return new PrintPlan(batches, query.minutesPerPlate(), query.watts());
    }

    private Map<Kind, Need> needs(LayoutDocument layout, LayoutPlan plan, boolean shaped) {
        List<StationRow> stations = StationRow.of(layout, plan);
        Map<Kind, Need> needs = new LinkedHashMap<>();
        for (int i = 0; i < layout.rows().size(); i++) {
            int number = i + 1;
            List<StationRow> own =
                    stations.stream().filter(s -> s.row() == number).toList();
            if (!own.isEmpty()) {
                Revision<DeviceDocument> device = plan.devices().get(i);
                Kind kind = new Kind(device.ref(), shaped ? underside(own, device.content()) : null);
                Need need = needs.computeIfAbsent(kind, k -> new Need(device));
                need.fitted += own.size();
                need.rows.add(number + ": " + own.get(0).rowName());
            }
        }
        return needs;
    }

    /** Radius under the middle of the row on one wing; absent where this device cannot follow it. */
    private static @Nullable Double underside(List<StationRow> row, DeviceDocument device) {
        List<StationRow> oneWing =
                row.stream().filter(s -> s.wing() == row.get(0).wing()).toList();
        Double radius = BaseFit.radiusMm(oneWing.get(oneWing.size() / 2));
        DeviceDesign shaped = DeviceSolids.on(device.design(), radius);
        return DesignRules.check(shaped).isEmpty() ? radius : null;
    }

    private PrintPlan.Batch batch(Kind kind, Need need, PrintPlanQuery query) {
        Mesh mesh = solids.exact(DeviceSolids.on(need.device.content().design(), kind.undersideRadiusMm()));
        int spares = query.spares().of(need.fitted);
        PrintPlanQuery.Bed bed = query.bed();
        List<Plate> plates =
                BuildPlate.arrange(mesh, bed.widthMm(), bed.depthMm(), need.fitted + spares, bed.spacingMm());
        PieceMaterial material = PieceMaterial.of(mesh, query.settings());
        return new PrintPlan.Batch(
                need.device,
                kind.undersideRadiusMm(),
                need.rows,
                need.fitted,
                spares,
                plates.stream().map(p -> p.placements().size()).toList(),
                material,
                query.rate().minutes(need.fitted + spares, material));
    }
}
