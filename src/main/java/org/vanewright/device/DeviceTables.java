package org.vanewright.device;

import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.vanewright.engineering.solid.DeviceDesign.Base;
import org.vanewright.engineering.solid.DeviceDesign.Pair;
import org.vanewright.engineering.solid.DeviceDesign.Vane;
import org.vanewright.export.Columns;
import org.vanewright.export.RecordTable;
import org.vanewright.export.RecordTables;

/** Devices in the export. */
@Component
class DeviceTables implements RecordTables<DeviceDocument> {
    @Override
    public String kind() {
        return "device";
    }

    @Override
    public List<RecordTable<DeviceDocument, ?>> tables() {
        Columns<DeviceDocument> columns = new Columns<DeviceDocument>()
                .text("name", "What people call it", DeviceDocument::name)
                .text("description", "What it is for", DeviceDocument::description);
        vane(columns);
        pair(columns);
        base(columns);
        columns.yesNo("index_mark", "Whether a raised mark shows forward", DeviceDocument::indexMark)
                .number(
                        "chord_tolerance_mm",
                        "mm",
                        "Largest distance between a curve and its facets",
                        DeviceDocument::chordToleranceMm)
                .number("density_kg_m3", "kg/m3", "Of the material it is meant for", DeviceDocument::densityKgM3)
                .yesNo("invented", "Whether it is demonstration data", DeviceDocument::invented);
        return List.of(RecordTable.ofRecords(
                "device", "devices", "Designs of printed pieces; a value that is empty takes the usual one", columns));
    }

    private static void vane(Columns<DeviceDocument> columns) {
        columns.choice(
                        "planform",
                        "Outline of the vane seen from the side",
                        d -> d.vane() == null ? null : d.vane().planform())
                .number("height_mm", "mm", "Height of the vane above the base", vane(Vane::heightMm))
                .number("length_mm", "mm", "Length of the vane at its root", vane(Vane::lengthMm))
                .number("thickness_mm", "mm", "Thickness of the vane's plate", vane(Vane::thicknessMm))
                .number("tip_length_mm", "mm", "Length of the tip of a swept trapezium", vane(Vane::tipLengthMm))
                .choice(
                        "leading_edge",
                        "Treatment of the leading edge",
                        d -> d.vane() == null ? null : d.vane().leadingEdge())
                .choice(
                        "trailing_edge",
                        "Treatment of the trailing edge",
                        d -> d.vane() == null ? null : d.vane().trailingEdge())
                .number("tip_radius_mm", "mm", "Rounding of the front upper corner", vane(Vane::tipRadiusMm))
                .number("fillet_radius_mm", "mm", "Between vane and base", vane(Vane::filletRadiusMm))
                .number(
                        "foot_angle_deg",
                        "deg",
                        "Slope at which it thickens to its printing foot",
                        vane(Vane::footAngleDeg))
                .number("foot_width_mm", "mm", "Full width of that foot", vane(Vane::footWidthMm));
    }

    private static void pair(Columns<DeviceDocument> columns) {
        columns.number(
                        "pair_angle_deg",
                        "deg",
                        "Of each vane of a pair, toe-in positive; empty for a single vane",
                        d -> of(d.pair(), Pair::angleDeg))
                .number("pair_gap_mm", "mm", "Between the vanes of a pair", d -> of(d.pair(), Pair::gapMm));
    }

    private static void base(Columns<DeviceDocument> columns) {
        columns.choice(
                        "base_outline",
                        "Outline of the base seen from above",
                        d -> d.base() == null ? null : d.base().outline())
                .number("base_length_mm", "mm", "Length of the base", base(Base::lengthMm))
                .number("base_width_mm", "mm", "Width of the base", base(Base::widthMm))
                .number("base_thickness_mm", "mm", "Thickness of the base at its thinnest", base(Base::thicknessMm))
                .number("base_corner_radius_mm", "mm", "Of a rounded rectangle", base(Base::cornerRadiusMm))
                .number("base_edge_bevel_mm", "mm", "Bevel round the upper edge", base(Base::edgeBevelMm))
                .number(
                        "base_trailing_edge_inset_mm",
                        "mm",
                        "From the base's rear end to the vane's trailing edge",
                        base(Base::trailingEdgeInsetMm))
                .number(
                        "base_underside_radius_mm",
                        "mm",
                        "Radius of the skin it sits on; flat where empty",
                        base(Base::undersideRadiusMm));
    }

    private static Function<DeviceDocument, @Nullable Double> vane(Function<Vane, @Nullable Double> figure) {
        return d -> of(d.vane(), figure);
    }

    private static Function<DeviceDocument, @Nullable Double> base(Function<Base, @Nullable Double> figure) {
        return d -> of(d.base(), figure);
    }

    private static <P> @Nullable Double of(@Nullable P part, Function<P, @Nullable Double> figure) {
        return part == null ? null : figure.apply(part);
    }
}
