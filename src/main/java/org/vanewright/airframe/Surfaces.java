package org.vanewright.airframe;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.section.Section;
import org.vanewright.engineering.section.SectionSpec;
import org.vanewright.engineering.section.Sections;
import org.vanewright.engineering.wing.WingPanel;

/** Surfaces as the engineering core computes with them. */
public final class Surfaces {
    private Surfaces() {}

    /**
     * The panels of a surface that has passed {@link AirframeRules}.
     *
     * @throws InvalidInputException where a number or section is missing
     */
    public static List<WingPanel> toWing(SurfaceDocument surface) {
        List<WingPanel> wing = new ArrayList<>();
        for (int i = 0; i < surface.panels().size(); i++) {
            wing.add(toPanel("panels[" + i + "].", surface.panels().get(i)));
        }
        return List.copyOf(wing);
    }

    /** Place of a surface in its airframe, by its name in any case. */
    public static Optional<SurfaceDocument> named(AirframeDocument airframe, String name) {
        String wanted = name.strip().toLowerCase(Locale.ROOT);
        return airframe.surfaces().stream()
                .filter(s -> s.label().strip().toLowerCase(Locale.ROOT).equals(wanted))
                .findFirst();
    }

    /** Area of both sides between root and tip, without what lies between the roots. */
    public static double areaM2(SurfaceDocument surface) {
        double oneSideMm2 = toWing(surface).stream()
                .mapToDouble(p -> p.spanMm() * (p.innerChordMm() + p.outerChordMm()) / 2)
                .sum();
        boolean mirrored = surface.kind() == null || surface.kind().mirrored();
        return (mirrored ? 2 : 1) * oneSideMm2 / 1e6;
    }

    /** Where panels meet, with root and tip: the span stations at which something begins or ends. */
    public static List<Double> stationsMm(SurfaceDocument surface) {
        return IntStream.rangeClosed(0, surface.panels().size())
                .mapToObj(i -> i == 0
                        ? surface.panels().get(0).innerStationMm()
                        : surface.panels().get(i - 1).outerStationMm())
                .map(s -> s == null ? 0.0 : s)
                .toList();
    }

    private static WingPanel toPanel(String path, PanelDocument p) {
        SectionSpec inner = p.innerSection();
        if (inner == null) {
            throw new InvalidInputException(missing(path + "innerSection"));
        }
        Section innerSection = Sections.of(inner);
        SectionSpec outer = p.outerSection();
        Section outerSection = outer == null || outer.equals(inner) ? innerSection : Sections.of(outer);
        double innerLeadingEdge = or(p.innerLeadingEdgeMm(), 0);
        return new WingPanel(
                required(path + "innerStationMm", p.innerStationMm()),
                required(path + "outerStationMm", p.outerStationMm()),
                required(path + "innerChordMm", p.innerChordMm()),
                required(path + "outerChordMm", p.outerChordMm()),
                innerLeadingEdge,
                or(p.outerLeadingEdgeMm(), innerLeadingEdge),
                innerSection,
                outerSection,
                or(p.twistDeg(), 0));
    }

    private static double required(String field, @Nullable Double number) {
        if (number == null || !Double.isFinite(number)) {
            throw new InvalidInputException(missing(field));
        }
        return number;
    }

    private static FieldProblem missing(String field) {
        return new FieldProblem(field, "missing", "a value");
    }

    private static double or(@Nullable Double number, double otherwise) {
        return number == null ? otherwise : number;
    }
}
