package org.vanewright.airframe;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.vanewright.engineering.section.SectionSpec;
import org.vanewright.export.Columns;
import org.vanewright.export.RecordTable;
import org.vanewright.export.RecordTables;

/** Airframes in the export. */
@Component
class AirframeTables implements RecordTables<AirframeDocument> {
    private static final String MAIN = "airframes";

    /** A panel with the numbers of its surface and itself. */
    private record Panel(int surface, int panel, PanelDocument is) {}

    /** A keep-out with the number of its surface. */
    private record KeepOut(int surface, KeepOutDocument is) {}

    /** A coordinate of a section that is given by coordinates. */
    private record Coordinate(Panel of, String end, int point, List<Double> xy) {}

    @Override
    public String kind() {
        return "airframe";
    }

    @Override
    public List<RecordTable<AirframeDocument, ?>> tables() {
        return List.of(airframes(), surfaces(), panels(), sections(), keepOuts());
    }

    private static RecordTable<AirframeDocument, AirframeDocument> airframes() {
        return RecordTable.ofRecords(
                "airframe",
                MAIN,
                "Aircraft as clubs describe them",
                new Columns<AirframeDocument>()
                        .text("name", "As the club calls it", AirframeDocument::name)
                        .text("description", "Anything a reader should know", AirframeDocument::description)
                        .choice("operating_basis", "Under which rules it flies", AirframeDocument::operatingBasis)
                        .number("empty_mass_kg", "kg", "Empty mass", mass(AirframeDocument.Masses::emptyKg))
                        .number(
                                "maximum_mass_kg",
                                "kg",
                                "Maximum take-off mass, which nothing fitted to it raises",
                                mass(AirframeDocument.Masses::maximumKg))
                        .number(
                                "vs0_kt",
                                "kt",
                                "Calibrated stalling speed, landing configuration",
                                speed(AirframeDocument.Speeds::vs0Kt))
                        .number(
                                "vs1_kt",
                                "kt",
                                "Calibrated stalling speed, clean",
                                speed(AirframeDocument.Speeds::vs1Kt))
                        .number(
                                "approach_kt",
                                "kt",
                                "Calibrated approach speed",
                                speed(AirframeDocument.Speeds::approachKt))
                        .number("va_kt", "kt", "Calibrated manoeuvring speed", speed(AirframeDocument.Speeds::vaKt))
                        .number(
                                "cruise_kt",
                                "kt",
                                "Calibrated cruising speed",
                                speed(AirframeDocument.Speeds::cruiseKt))
                        .number("vne_kt", "kt", "Calibrated never-exceed speed", speed(AirframeDocument.Speeds::vneKt))
                        .number("wing_area_m2", "m2", "Reference area", AirframeDocument::wingAreaM2)
                        .yesNo("invented", "Whether it is demonstration data", AirframeDocument::invented));
    }

    private static Function<AirframeDocument, @Nullable Double> mass(
            Function<AirframeDocument.Masses, @Nullable Double> of) {
        return a -> a.masses() == null ? null : of.apply(a.masses());
    }

    private static Function<AirframeDocument, @Nullable Double> speed(
            Function<AirframeDocument.Speeds, @Nullable Double> of) {
        return a -> a.speeds() == null ? null : of.apply(a.speeds());
    }

    private static RecordTable<AirframeDocument, SurfaceDocument> surfaces() {
        return RecordTable.ofParts(
                MAIN,
                "airframe_surfaces",
                "Wings, stabilisers and fins",
                "surface",
                AirframeDocument::surfaces,
                new Columns<SurfaceDocument>()
                        .text("name", "As people call it", SurfaceDocument::name)
                        .choice("surface_kind", "What it is", SurfaceDocument::kind));
    }

    private static RecordTable<AirframeDocument, Panel> panels() {
        return RecordTable.ofParts(
                MAIN,
                "airframe_panels",
                "Straight-tapered pieces of surfaces, from the root outboard; absent values as in the documents",
                "number",
                AirframeTables::panelsOf,
                new Columns<Panel>()
                        .whole("surface", "Number of its surface", Panel::surface)
                        .whole("panel", "Its number within the surface", Panel::panel)
                        .number("inner_station_mm", "mm", "Span station where it begins", p -> p.is().innerStationMm())
                        .number("outer_station_mm", "mm", "Span station where it ends", p -> p.is().outerStationMm())
                        .number("inner_chord_mm", "mm", "Chord at the inner end", p -> p.is().innerChordMm())
                        .number("outer_chord_mm", "mm", "Chord at the outer end", p -> p.is().outerChordMm())
                        .number(
                                "inner_leading_edge_mm",
                                "mm",
                                "Offset of the leading edge at the inner end; 0 where empty",
                                p -> p.is().innerLeadingEdgeMm())
                        .number(
                                "outer_leading_edge_mm",
                                "mm",
                                "Offset of the leading edge at the outer end; as at the inner end where empty",
                                p -> p.is().outerLeadingEdgeMm())
                        .text("inner_naca", "NACA section at the inner end", p -> naca(p.is().innerSection()))
                        .text("outer_naca", "NACA section at the outer end", p -> naca(p.is().outerSection()))
                        .text(
                                "inner_title",
                                "Title of a section given by coordinates",
                                p -> title(p.is().innerSection()))
                        .text(
                                "outer_title",
                                "Title of a section given by coordinates",
                                p -> title(p.is().outerSection()))
                        .number(
                                "twist_deg",
                                "deg",
                                "Of the outer section against the inner one, nose up positive; 0 where empty",
                                p -> p.is().twistDeg()));
    }

    private static List<Panel> panelsOf(AirframeDocument airframe) {
        List<Panel> panels = new ArrayList<>();
        for (int s = 0; s < airframe.surfaces().size(); s++) {
            List<PanelDocument> of = airframe.surfaces().get(s).panels();
            for (int p = 0; p < of.size(); p++) {
                panels.add(new Panel(s + 1, p + 1, of.get(p)));
            }
        }
        return panels;
    }

    private static RecordTable<AirframeDocument, Coordinate> sections() {
        return RecordTable.ofParts(
                MAIN,
                "airframe_section_points",
                "Coordinates of sections that are given by them: trailing edge, upper side, leading edge, lower side",
                "number",
                AirframeTables::coordinates,
                new Columns<Coordinate>()
                        .whole("surface", "Number of the surface", c -> c.of().surface())
                        .whole("panel", "Number of the panel within the surface", c -> c.of().panel())
                        .text("panel_end", "INNER or OUTER", Coordinate::end)
                        .whole("point", "Number of the point, from 1", Coordinate::point)
                        .ratio("x", "Along the chord, in chords", c -> at(c, 0))
                        .ratio("y", "Square to it, in chords", c -> at(c, 1)));
    }

    private static @Nullable Double at(Coordinate c, int axis) {
        return c.xy().size() > axis ? c.xy().get(axis) : null;
    }

    private static List<Coordinate> coordinates(AirframeDocument airframe) {
        List<Coordinate> all = new ArrayList<>();
        for (Panel panel : panelsOf(airframe)) {
            add(all, panel, "INNER", panel.is().innerSection());
            add(all, panel, "OUTER", panel.is().outerSection());
        }
        return all;
    }

    private static void add(List<Coordinate> all, Panel panel, String end, @Nullable SectionSpec section) {
        if (section != null && section.coordinates() != null) {
            for (int i = 0; i < section.coordinates().size(); i++) {
                all.add(new Coordinate(panel, end, i + 1, section.coordinates().get(i)));
            }
        }
    }

    private static RecordTable<AirframeDocument, KeepOut> keepOuts() {
        return RecordTable.ofParts(
                MAIN,
                "airframe_keep_outs",
                "Where no device may sit",
                "number",
                AirframeTables::keepOutsOf,
                new Columns<KeepOut>()
                        .whole("surface", "Number of its surface", KeepOut::surface)
                        .number("from_mm", "mm", "Inner span station", k -> k.is().fromMm())
                        .number("to_mm", "mm", "Outer span station", k -> k.is().toMm())
                        .choice("side", "On which skin", k -> k.is().side())
                        .text("reason", "Why", k -> k.is().reason()));
    }

    private static List<KeepOut> keepOutsOf(AirframeDocument airframe) {
        List<KeepOut> all = new ArrayList<>();
        for (int s = 0; s < airframe.surfaces().size(); s++) {
            for (KeepOutDocument keepOut : airframe.surfaces().get(s).keepOuts()) {
                all.add(new KeepOut(s + 1, keepOut));
            }
        }
        return all;
    }

    private static @Nullable String naca(@Nullable SectionSpec section) {
        return section == null ? null : section.naca();
    }

    private static @Nullable String title(@Nullable SectionSpec section) {
        return section == null ? null : section.title();
    }
}
