package org.vanewright.airframe;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.section.Section;
import org.vanewright.engineering.section.SectionSpec;
import org.vanewright.engineering.section.Sections;
import org.vanewright.engineering.section.SurfaceSide;

/** The rules of one surface: panels that join, chords and sections that can be built, keep-outs that lie on it. */
final class SurfaceRules {
    private static final double MAX_STATION_MM = 20000;
    private static final double MIN_SPAN_MM = 50;
    private static final double MIN_CHORD_MM = 50;
    private static final double MAX_CHORD_MM = 5000;
    /** A chord that grows outboard by more than half is taken for a slip of the pen. */
    private static final double MAX_GROWTH = 1.5;
    /** So is a panel that loses more than nine tenths of its chord. */
    private static final double MIN_TAPER = 0.1;
    /** Stations of neighbouring panels must agree to this. */
    private static final double CHORD_TOLERANCE = 0.01;

    private static final double JOINT_TOLERANCE_MM = 0.01;

    private SurfaceRules() {}

    static List<FieldProblem> check(SurfaceDocument surface) {
        Checks checks = new Checks();
        checks.text("name", surface.name(), 60);
        checks.present("kind", surface.kind(), "wing, horizontal stabiliser or fin");
        List<PanelDocument> panels = surface.panels();
        checks.require(
                !panels.isEmpty() && panels.size() <= AirframeRules.MAX_PANELS,
                "panels",
                panels.size(),
                "1 to " + AirframeRules.MAX_PANELS + " panels");
        for (int i = 0; i < Math.min(panels.size(), AirframeRules.MAX_PANELS); i++) {
            checks.addUnder("panels[" + i + "]", checkPanel(panels.get(i)));
            if (i > 0) {
                checkJoint(
                        checks,
                        i,
                        panels.get(i - 1).outerStationMm(),
                        panels.get(i).innerStationMm());
            }
        }
        checkKeepOuts(checks, surface);
        return checks.problems();
    }

    private static List<FieldProblem> checkPanel(PanelDocument p) {
        Checks checks = new Checks();
        boolean inner = checks.range("innerStationMm", p.innerStationMm(), 0, MAX_STATION_MM, "mm");
        boolean outer = checks.range("outerStationMm", p.outerStationMm(), 0, MAX_STATION_MM, "mm");
        if (inner && outer) {
            checks.require(
                    value(p.outerStationMm()) - value(p.innerStationMm()) >= MIN_SPAN_MM,
                    "outerStationMm",
                    p.outerStationMm(),
                    "at least 50 mm more than the inner station");
        }
        boolean root = checks.range("innerChordMm", p.innerChordMm(), MIN_CHORD_MM, MAX_CHORD_MM, "mm");
        boolean tip = checks.range("outerChordMm", p.outerChordMm(), MIN_CHORD_MM, MAX_CHORD_MM, "mm");
        if (root && tip) {
            double taper = value(p.outerChordMm()) / value(p.innerChordMm());
            checks.require(
                    taper <= MAX_GROWTH,
                    "outerChordMm",
                    p.outerChordMm(),
                    "at most one and a half times the inner chord");
            checks.require(taper >= MIN_TAPER, "outerChordMm", p.outerChordMm(), "at least a tenth of the inner chord");
        }
        checks.optionalRange("innerLeadingEdgeMm", p.innerLeadingEdgeMm(), -5000, 5000, "mm");
        checks.optionalRange("outerLeadingEdgeMm", p.outerLeadingEdgeMm(), -5000, 5000, "mm");
        checks.optionalRange("twistDeg", p.twistDeg(), -10, 10, "degrees");
        checkSection(checks, "innerSection", p.innerSection());
        if (p.outerSection() != null && !p.outerSection().equals(p.innerSection())) {
            checkSection(checks, "outerSection", p.outerSection());
        }
        return checks.problems();
    }

    private static void checkSection(Checks checks, String field, @Nullable SectionSpec section) {
        if (!checks.present(field, section, "a NACA number or coordinates") || section == null) {
            return;
        }
        try {
            Section built = Sections.of(section);
            double end = built.maximumX(SurfaceSide.UPPER);
            // Chords come from the panel, so a section of another size would make another wing.
            checks.require(
                    Math.abs(end - 1) <= CHORD_TOLERANCE,
                    field + ".coordinates",
                    end,
                    "a trailing edge at x = 1, since chords come from the panel; an uploaded file is brought to that");
        } catch (InvalidInputException e) {
            checks.addUnder(field, e.problems());
        }
    }

    private static void checkJoint(Checks checks, int index, @Nullable Double end, @Nullable Double start) {
        if (end == null || start == null || !Double.isFinite(start - end)) {
            return;
        }
        double gapMm = start - end;
        checks.require(
                Math.abs(gapMm) <= JOINT_TOLERANCE_MM,
                "panels[" + index + "].innerStationMm",
                start,
                String.format(
                        Locale.ROOT,
                        "%.1f mm, where the panel before ends (%s of %.1f mm)",
                        end,
                        gapMm > 0 ? "a gap" : "an overlap",
                        Math.abs(gapMm)));
    }

    private static void checkKeepOuts(Checks checks, SurfaceDocument surface) {
        List<KeepOutDocument> keepOuts = surface.keepOuts();
        boolean count = checks.require(
                keepOuts.size() <= AirframeRules.MAX_KEEP_OUTS,
                "keepOuts",
                keepOuts.size(),
                "at most " + AirframeRules.MAX_KEEP_OUTS + " keep-outs");
        if (!count) {
            return;
        }
        List<PanelDocument> panels = surface.panels();
        double root = panels.isEmpty() ? 0 : finite(panels.get(0).innerStationMm(), 0);
        double tip = panels.isEmpty()
                ? MAX_STATION_MM
                : finite(panels.get(panels.size() - 1).outerStationMm(), MAX_STATION_MM);
        for (int i = 0; i < keepOuts.size(); i++) {
            checks.addUnder("keepOuts[" + i + "]", checkKeepOut(keepOuts.get(i), root, Math.max(root, tip)));
        }
    }

    private static List<FieldProblem> checkKeepOut(KeepOutDocument k, double rootMm, double tipMm) {
        Checks checks = new Checks();
        boolean from = checks.range("fromMm", k.fromMm(), rootMm, tipMm, "mm");
        boolean to = checks.range("toMm", k.toMm(), rootMm, tipMm, "mm");
        if (from && to) {
            checks.require(value(k.toMm()) > value(k.fromMm()), "toMm", k.toMm(), "more than where it begins");
        }
        checks.present("side", k.side(), "upper, lower or both");
        checks.text("reason", k.reason(), 120);
        return checks.problems();
    }

    private static double value(@Nullable Double checked) {
        return finite(checked, Double.NaN);
    }

    private static double finite(@Nullable Double number, double otherwise) {
        return number == null || !Double.isFinite(number) ? otherwise : number;
    }
}
