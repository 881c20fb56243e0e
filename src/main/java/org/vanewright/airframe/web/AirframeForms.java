package org.vanewright.airframe.web;

import static org.vanewright.platform.page.Quantity.AREA;
import static org.vanewright.platform.page.Quantity.LENGTH;
import static org.vanewright.platform.page.Quantity.MASS;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.airframe.AirframeDocument.Masses;
import org.vanewright.airframe.AirframeDocument.Speeds;
import org.vanewright.airframe.KeepOutDocument;
import org.vanewright.airframe.KeepOutSide;
import org.vanewright.airframe.OperatingBasis;
import org.vanewright.airframe.PanelDocument;
import org.vanewright.airframe.SurfaceDocument;
import org.vanewright.engineering.section.SectionSpec;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.OriginFields;
import org.vanewright.platform.form.PhotographFields;
import org.vanewright.platform.page.UnitSystem;

/** Between an airframe and its form. Fields are named by the document's own paths. */
final class AirframeForms {
    private AirframeForms() {}

    /** A form with one wing of one panel, to start from. */
    static Form blank(UnitSystem units) {
        Form form = new Form(units);
        form.put("surfaces[0].name", "Wing").put("surfaces[0].kind", SurfaceDocument.Kind.WING.name());
        AirframeFormLists.addPanel(form, "surfaces[0]");
        form.put("surfaces[0].panels[0].innerStationMm", LENGTH, 0.0);
        return form;
    }

    static Form of(AirframeDocument a, UnitSystem units) {
        Form form = new Form(units);
        Masses masses = a.masses() == null ? new Masses(null, null) : a.masses();
        Speeds s = a.speeds() == null ? new Speeds(null, null, null, null, null, null) : a.speeds();
        form.put("name", a.name())
                .put("description", a.description())
                .put("invented", a.invented() ? "true" : "")
                .put("operatingBasis", a.operatingBasis())
                .put("masses.emptyKg", MASS, masses.emptyKg())
                .put("masses.maximumKg", MASS, masses.maximumKg())
                .put("wingAreaM2", AREA, a.wingAreaM2())
                .put("speeds.vs0Kt", s.vs0Kt())
                .put("speeds.vs1Kt", s.vs1Kt())
                .put("speeds.vaKt", s.vaKt())
                .put("speeds.vneKt", s.vneKt())
                .put("speeds.approachKt", s.approachKt())
                .put("speeds.cruiseKt", s.cruiseKt());
        for (int i = 0; i < a.surfaces().size(); i++) {
            putSurface(form, "surfaces[" + i + "]", a.surfaces().get(i));
        }
        OriginFields.put(form, a);
        PhotographFields.put(form, a);
        return form;
    }

    private static void putSurface(Form form, String at, SurfaceDocument surface) {
        form.put(at + ".name", surface.name()).put(at + ".kind", surface.kind());
        SectionSpec before = null;
        for (int i = 0; i < surface.panels().size(); i++) {
            PanelDocument p = surface.panels().get(i);
            putPanel(form, at + ".panels[" + i + "]", p, before);
            before = p.outerSection() == null ? p.innerSection() : p.outerSection();
        }
        for (int i = 0; i < surface.keepOuts().size(); i++) {
            KeepOutDocument k = surface.keepOuts().get(i);
            String path = at + ".keepOuts[" + i + "]";
            form.put(path + ".fromMm", LENGTH, k.fromMm())
                    .put(path + ".toMm", LENGTH, k.toMm())
                    .put(path + ".side", k.side())
                    .put(path + ".reason", k.reason());
        }
    }

    private static void putPanel(Form form, String at, PanelDocument p, @Nullable SectionSpec before) {
        form.put(at + ".innerStationMm", LENGTH, p.innerStationMm())
                .put(at + ".outerStationMm", LENGTH, p.outerStationMm())
                .put(at + ".innerChordMm", LENGTH, p.innerChordMm())
                .put(at + ".outerChordMm", LENGTH, p.outerChordMm())
                .put(at + ".innerLeadingEdgeMm", LENGTH, p.innerLeadingEdgeMm())
                .put(at + ".outerLeadingEdgeMm", LENGTH, p.outerLeadingEdgeMm())
                .put(at + ".twistDeg", p.twistDeg());
        SectionFields.put(form, at + ".innerSection", p.innerSection(), before);
        SectionFields.put(form, at + ".outerSection", p.outerSection(), p.innerSection());
    }

    /** The airframe as typed; what cannot be read is noted in the form. */
    static AirframeDocument read(Form form, @Nullable AirframeDocument base) {
        List<SectionSpec> known = base == null ? List.of() : sections(base);
        List<SurfaceDocument> surfaces = new ArrayList<>();
        for (int i = 0; i < form.size("surfaces"); i++) {
            surfaces.add(readSurface(form, "surfaces[" + i + "]", known));
        }
        String name = form.text("name");
        return new AirframeDocument(
                name == null ? "" : name,
                form.text("description"),
                form.choice("operatingBasis", OperatingBasis.class),
                new Masses(form.number("masses.emptyKg", MASS), form.number("masses.maximumKg", MASS)),
                new Speeds(
                        form.number("speeds.vs0Kt"),
                        form.number("speeds.vs1Kt"),
                        form.number("speeds.vaKt"),
                        form.number("speeds.vneKt"),
                        form.number("speeds.approachKt"),
                        form.number("speeds.cruiseKt")),
                form.number("wingAreaM2", AREA),
                surfaces,
                form.checked("invented"),
                OriginFields.read(form),
                PhotographFields.read(form));
    }

    private static List<SectionSpec> sections(AirframeDocument airframe) {
        return airframe.surfaces().stream()
                .flatMap(s -> s.panels().stream())
                .flatMap(p -> Stream.of(p.innerSection(), p.outerSection()))
                .flatMap(Stream::ofNullable)
                .toList();
    }

    private static SurfaceDocument readSurface(Form form, String at, List<SectionSpec> known) {
        List<PanelDocument> panels = new ArrayList<>();
        SectionSpec before = null;
        for (int i = 0; i < form.size(at + ".panels"); i++) {
            PanelDocument panel = readPanel(form, at + ".panels[" + i + "]", before, known);
            panels.add(panel);
            before = panel.outerSection();
        }
        List<KeepOutDocument> keepOuts = new ArrayList<>();
        for (int i = 0; i < form.size(at + ".keepOuts"); i++) {
            String path = at + ".keepOuts[" + i + "]";
            keepOuts.add(new KeepOutDocument(
                    form.number(path + ".fromMm", LENGTH),
                    form.number(path + ".toMm", LENGTH),
                    form.choice(path + ".side", KeepOutSide.class),
                    form.text(path + ".reason")));
        }
        return new SurfaceDocument(
                form.text(at + ".name"), form.choice(at + ".kind", SurfaceDocument.Kind.class), panels, keepOuts);
    }

    private static PanelDocument readPanel(
            Form form, String at, @Nullable SectionSpec before, List<SectionSpec> known) {
        SectionSpec inner = SectionFields.read(form, at + ".innerSection", before, known);
        SectionSpec outer = SectionFields.read(form, at + ".outerSection", inner, known);
        return new PanelDocument(
                form.number(at + ".innerStationMm", LENGTH),
                form.number(at + ".outerStationMm", LENGTH),
                form.number(at + ".innerChordMm", LENGTH),
                form.number(at + ".outerChordMm", LENGTH),
                form.number(at + ".innerLeadingEdgeMm", LENGTH),
                form.number(at + ".outerLeadingEdgeMm", LENGTH),
                inner,
                outer,
                form.number(at + ".twistDeg"));
    }
}
