package org.vanewright.airframe;

import java.util.List;
import org.vanewright.engineering.drawing.Drawing;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.wing.PlanDrawing;
import org.vanewright.platform.page.PlanLettering;
import org.vanewright.platform.page.Units;

/** Surfaces in plan, for every page that shows one. */
public final class SurfaceDrawings {
    private SurfaceDrawings() {}

    /** With panels, chord fractions, keep-outs and dimensions. */
    public static Drawing plan(SurfaceDocument surface, Units units) {
        return PlanDrawing.of(
                surface.label() + " in plan",
                Surfaces.toWing(surface),
                mirrored(surface),
                keepOuts(surface),
                new PlanLettering(units));
    }

    /** Without lettering, for a list. */
    public static Drawing thumbnail(String title, SurfaceDocument surface, Units units) {
        return PlanDrawing.thumbnail(
                title, Surfaces.toWing(surface), mirrored(surface), keepOuts(surface), new PlanLettering(units));
    }

    /** The surface of that name. */
    public static SurfaceDocument named(AirframeDocument airframe, String name) {
        return Surfaces.named(airframe, name)
                .orElseThrow(() -> new InvalidInputException(
                        new FieldProblem("surface", name, "a surface of " + airframe.name())));
    }

    private static boolean mirrored(SurfaceDocument surface) {
        return surface.kind() == null || surface.kind().mirrored();
    }

    private static List<PlanDrawing.KeepOut> keepOuts(SurfaceDocument surface) {
        return surface.keepOuts().stream()
                .filter(k -> k.fromMm() != null && k.toMm() != null && k.toMm() > k.fromMm())
                .map(SurfaceDrawings::keepOut)
                .toList();
    }

    private static PlanDrawing.KeepOut keepOut(KeepOutDocument k) {
        String reason = k.reason() == null ? "keep-out" : k.reason();
        return new PlanDrawing.KeepOut(k.fromMm() == null ? 0 : k.fromMm(), k.toMm() == null ? 0 : k.toMm(), reason);
    }
}
