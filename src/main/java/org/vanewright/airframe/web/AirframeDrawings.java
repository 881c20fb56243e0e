package org.vanewright.airframe.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.airframe.SurfaceDocument;
import org.vanewright.airframe.SurfaceDrawings;
import org.vanewright.airframe.Surfaces;
import org.vanewright.engineering.drawing.SvgWriter;
import org.vanewright.engineering.section.Section;
import org.vanewright.engineering.wing.SectionDrawing;
import org.vanewright.engineering.wing.WingPanel;
import org.vanewright.platform.page.Units;

/** Draws surfaces that the rules have passed. */
final class AirframeDrawings {
    private AirframeDrawings() {}

    static List<SurfaceView> surfaces(AirframeDocument airframe, Units units) {
        return IntStream.range(0, airframe.surfaces().size())
                .mapToObj(i -> surface(airframe.surfaces().get(i), "surface-" + i, units))
                .toList();
    }

    /** @param id unique on the page */
    static SurfaceView surface(SurfaceDocument surface, String id, Units units) {
        List<WingPanel> wing = Surfaces.toWing(surface);
        List<SurfaceView.PanelRow> rows = new ArrayList<>();
        for (int i = 0; i < wing.size(); i++) {
            WingPanel p = wing.get(i);
            rows.add(new SurfaceView.PanelRow(
                    i + 1,
                    surface.panels().get(i),
                    p.innerSection().designation(),
                    p.outerSection().designation(),
                    p.developable()));
        }
        return new SurfaceView(
                surface.label(),
                surface.kind() == null ? "" : surface.kind().label(),
                surface,
                SvgWriter.inline(SurfaceDrawings.plan(surface, units), "drawing plan", id + "-plan"),
                sections(wing, id + "-section"),
                rows,
                Surfaces.areaM2(surface));
    }

    /** The wing without lettering, for a list. */
    static Optional<String> thumbnail(AirframeDocument airframe, String id, Units units) {
        return airframe.surfaces().stream()
                .filter(s -> s.kind() == SurfaceDocument.Kind.WING)
                .findFirst()
                .map(s -> SvgWriter.inline(
                        SurfaceDrawings.thumbnail(airframe.name() + ", " + s.label() + " in plan", s, units),
                        "drawing thumbnail",
                        id));
    }

    private static List<SurfaceView.SectionView> sections(List<WingPanel> wing, String id) {
        List<Section> different = new ArrayList<>();
        for (WingPanel panel : wing) {
            for (Section section : List.of(panel.innerSection(), panel.outerSection())) {
                if (different.stream().noneMatch(s -> s.sameShapeAs(section))) {
                    different.add(section);
                }
            }
        }
        return IntStream.range(0, different.size())
                .mapToObj(i -> section(different.get(i), id + "-" + i))
                .toList();
    }

    private static SurfaceView.SectionView section(Section s, String id) {
        return new SurfaceView.SectionView(
                s.designation(),
                SvgWriter.inline(SectionDrawing.of(s), "drawing section", id),
                s.maximumThickness(),
                s.maximumCamber(),
                s.leadingEdgeRadius());
    }
}
