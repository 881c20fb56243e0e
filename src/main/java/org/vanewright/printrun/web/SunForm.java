package org.vanewright.printrun.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.printing.SunlitSkin;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.Option;

/** The part of a form that asks how the sun heats a skin. */
final class SunForm {
    /** Sun overhead on a hot day in still air; the coefficient and the emittance are usual ones, from memory. */
    private static final double IRRADIANCE_W_M2 = 1000;

    private static final double AIR_C = 38;
    private static final double CONVECTION_W_M2K = 8;
    private static final double EMITTANCE = 0.9;

    /** Absorptances of painted surfaces for sunlight, from memory. */
    static final List<Option> SURFACES = List.of(
            new Option("0.95", "Black or very dark (0.95)"),
            new Option("0.5", "Middling colour (0.5)"),
            new Option("0.2", "White (0.2)"));

    private SunForm() {}

    /** A dark skin on a hot, still day. */
    static SunlitSkin usual() {
        return new SunlitSkin(0.95, IRRADIANCE_W_M2, AIR_C, CONVECTION_W_M2K, EMITTANCE);
    }

    /** The same day with another surface. */
    static SunlitSkin usual(double absorptance) {
        return new SunlitSkin(absorptance, IRRADIANCE_W_M2, AIR_C, CONVECTION_W_M2K, EMITTANCE);
    }

    static Form fill(Form form) {
        SunlitSkin usual = usual();
        return form.ifEmpty("absorptance", usual.absorptance())
                .ifEmpty("irradianceWM2", usual.irradianceWM2())
                .ifEmpty("airC", usual.airC())
                .ifEmpty("convectionWM2K", usual.convectionWM2K())
                .ifEmpty("emittance", usual.emittance());
    }

    /** What was typed; null, with the problems noted in the form, where it cannot be used. */
    static @Nullable SunlitSkin read(Form form) {
        Double[] typed = new Double[5];
        String[] fields = {"absorptance", "irradianceWM2", "airC", "convectionWM2K", "emittance"};
        for (int i = 0; i < fields.length; i++) {
            typed[i] = form.number(fields[i]);
        }
        if (form.hasProblems()) {
            return null;
        }
        try {
            return new SunlitSkin(or(typed[0]), or(typed[1]), or(typed[2]), or(typed[3]), or(typed[4]));
        } catch (InvalidInputException e) {
            form.refuse(e.problems());
            return null;
        }
    }

    private static double or(@Nullable Double typed) {
        return typed == null ? Double.NaN : typed;
    }
}
