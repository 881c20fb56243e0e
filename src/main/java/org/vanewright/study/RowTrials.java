package org.vanewright.study;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.vanewright.device.DeviceDocument;
import org.vanewright.engineering.placement.Arrangement;
import org.vanewright.engineering.placement.Station;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.engineering.solid.DeviceDesign.Pair;
import org.vanewright.engineering.solid.VaneSide;
import org.vanewright.engineering.template.TemplateRow;
import org.vanewright.layout.LayoutPlan;

/** Rows of a layout as a study looks at them: at their middle device. */
final class RowTrials {
    private RowTrials() {}

    /** One row; absent where no device of it found a place. */
    static Optional<RowTrial> of(LayoutPlan plan, LayoutPlan.SurfacePlan surface, TemplateRow row) {
        int index = row.plan().index();
        List<Station> stations = surface.placement().on(Wing.RIGHT, index);
        List<Station> looked = stations.isEmpty() ? surface.placement().on(Wing.LEFT, index) : stations;
        if (looked.isEmpty()) {
            return Optional.empty();
        }
        Station middle = looked.get(looked.size() / 2);
        DeviceDocument device = plan.devices().get(index).content();
        VaneSide vane = VaneSide.of(Objects.requireNonNull(device.vane()));
        Pair pair = device.pair();
        int devices = surface.placement().on(Wing.LEFT, index).size() + stations.size();
        double angle = pair == null ? Math.abs(row.plan().angleDeg()) : Math.abs(number(pair.angleDeg()));
        return Optional.of(new RowTrial(
                index,
                row.plan().name(),
                surface.name(),
                row.plan().side(),
                middle.stationMm(),
                middle.xOverC(),
                vane,
                angle,
                row.plan().pitchMm(),
                gapMm(row.plan().arrangement(), row.plan().pairGapMm(), pair, vane, angle),
                devices * (pair == null ? 1 : 2)));
    }

    /** Between trailing edges, which is how recommendations count; layouts and devices count between middles. */
    static @Nullable Double gapMm(
            Arrangement arrangement,
            @Nullable Double betweenBasesMm,
            @Nullable Pair pair,
            VaneSide vane,
            double angleDeg) {
        double spread = vane.lengthMm() * Math.sin(Math.toRadians(angleDeg));
        if (pair != null) {
            return number(pair.gapMm()) + (number(pair.angleDeg()) >= 0 ? spread : -spread);
        }
        if (!arrangement.paired()) {
            return null;
        }
        return number(betweenBasesMm) + (arrangement == Arrangement.COMMON_FLOW_DOWN ? spread : -spread);
    }

    private static double number(@Nullable Double given) {
        return given == null ? 0 : given;
    }
}
