package org.vanewright.load;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.airframe.PanelDocument;
import org.vanewright.engineering.placement.Arrangement;
import org.vanewright.engineering.placement.ConflictPolicy;
import org.vanewright.engineering.placement.WingChoice;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.engineering.template.Register;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.RowDocument;

/** Layouts: one row or two along the wing, now and then one below the stabiliser. */
final class InventedLayouts {
    private static final List<String> AIMS = List.of(
            "short-field trial",
            "crosswind trial",
            "slow-flight trial",
            "aileron trial",
            "first try",
            "second try",
            "summer set",
            "rain trial",
            "towing trial",
            "float trial",
            "glider-tow set",
            "spin-margin study");

    private final CatalogueSize size;
    private final InventedAircraft aircraft;
    private final InventedVanes vanes;

    InventedLayouts(CatalogueSize size) {
        this.size = size;
        this.aircraft = new InventedAircraft(size.seed());
        this.vanes = new InventedVanes(size.seed());
    }

    /** Layouts go round the airframes, so that each has as many. */
    int airframeOf(int layout) {
        return layout % size.airframes();
    }

    /** The {@code n}-th layout of an airframe, from the first again where it has fewer. */
    int layoutOf(int airframe, int n) {
        int has = (size.layouts() - airframe + size.airframes() - 1) / size.airframes();
        return airframe + size.airframes() * (n % has);
    }

    LayoutDocument layout(int number) {
        Chance chance = new Chance(size.seed(), "layout", number);
        AirframeDocument airframe = aircraft.airframe(airframeOf(number));
        List<PanelDocument> panels = airframe.surfaces().get(0).panels();
        double root = value(panels.get(0).innerStationMm()) + 100;
        double tip = value(panels.get(panels.size() - 1).outerStationMm()) - 100;
        double middle = Math.rint((root + tip) / 2);
        List<RowDocument> rows = new ArrayList<>();
        if (chance.percent(70)) {
            double from = chance.percent(50) ? root : middle - 600;
            rows.add(row("Whole row", InventedAircraft.WING, SurfaceSide.UPPER, from, tip, chance));
        } else {
            rows.add(row("Inner row", InventedAircraft.WING, SurfaceSide.UPPER, root, middle - 150, chance));
            rows.add(row("Outer row", InventedAircraft.WING, SurfaceSide.UPPER, middle + 150, tip, chance));
        }
        if (chance.percent(8)) {
            rows.add(row("Below the elevator", InventedAircraft.STABILISER, SurfaceSide.LOWER, 120, 1200, chance));
        }
        String aim = chance.of(AIMS);
        return new LayoutDocument(
                Invention.name(Invention.place(chance) + " " + aim, number),
                "Invented " + aim + " with vanes ahead of where the flow is expected to leave the skin, by "
                        + Invention.place(chance) + ".",
                Invention.ref(airframe.name()),
                rows,
                true);
    }

    private RowDocument row(String name, String surface, SurfaceSide side, double from, double to, Chance chance) {
        int device = chance.below(size.devices());
        boolean pair = InventedVanes.isPair(device);
        Arrangement arrangement = pair ? Arrangement.COMMON_FLOW_DOWN : chance.of(List.of(Arrangement.values()));
        boolean single = arrangement == Arrangement.CO_ROTATING;
        return new RowDocument(
                name,
                Invention.ref(vanes.device(device).name()),
                surface,
                side,
                from,
                to,
                Chance.rounded(chance.between(0.07, 0.3, 0.01)),
                null,
                arrangement,
                pair ? null : chance.between(10, 20, 1),
                single ? chance.between(60, 110, 5) : chance.between(150, 220, 10),
                single || pair ? null : 60.0,
                WingChoice.BOTH_MIRRORED,
                ConflictPolicy.MOVE,
                Register.LEADING_EDGE,
                null);
    }

    private static double value(@Nullable Double figure) {
        return Objects.requireNonNull(figure);
    }
}
