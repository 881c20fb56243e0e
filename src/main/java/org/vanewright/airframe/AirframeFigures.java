package org.vanewright.airframe;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.airframe.AirframeDocument.Masses;
import org.vanewright.airframe.AirframeDocument.Speeds;
import org.vanewright.record.provenance.FigureGroup;

/** The figures of an airframe, by the names people use. */
final class AirframeFigures {
    private final List<FigureGroup> groups = new ArrayList<>();

    private AirframeFigures() {}

    static List<FigureGroup> of(AirframeDocument airframe) {
        AirframeFigures figures = new AirframeFigures();
        figures.masses(airframe.masses());
        figures.add("wingAreaM2", "Wing area", airframe.wingAreaM2());
        figures.speeds(airframe.speeds());
        for (int i = 0; i < airframe.surfaces().size(); i++) {
            figures.surface("surfaces[" + i + "]", airframe.surfaces().get(i));
        }
        return List.copyOf(figures.groups);
    }

    private void masses(@Nullable Masses masses) {
        if (masses != null) {
            add("masses", "Masses", masses);
            add("masses.emptyKg", "Empty mass", masses.emptyKg());
            add("masses.maximumKg", "Maximum mass", masses.maximumKg());
        }
    }

    private void speeds(@Nullable Speeds speeds) {
        if (speeds != null) {
            add("speeds", "Airspeeds", speeds);
            add("speeds.vs0Kt", "Vs0, flaps out", speeds.vs0Kt());
            add("speeds.vs1Kt", "Vs1, clean", speeds.vs1Kt());
            add("speeds.vaKt", "Va, manoeuvring", speeds.vaKt());
            add("speeds.vneKt", "Vne", speeds.vneKt());
            add("speeds.approachKt", "Typical approach", speeds.approachKt());
            add("speeds.cruiseKt", "Typical cruise", speeds.cruiseKt());
        }
    }

    private void surface(String at, SurfaceDocument surface) {
        add(at, surface.label(), surface);
        for (int i = 0; i < surface.panels().size(); i++) {
            add(at + ".panels[" + i + "]", surface.label() + ", panel " + (i + 1), surface);
        }
        if (!surface.keepOuts().isEmpty()) {
            add(at + ".keepOuts", surface.label() + ", keep-outs", surface);
        }
    }

    private void add(String path, String words, @Nullable Object figure) {
        if (figure != null) {
            groups.add(new FigureGroup(path, words));
        }
    }
}
