package org.vanewright.device.web;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.vanewright.device.DeviceDocument;
import org.vanewright.device.DeviceSolids;
import org.vanewright.engineering.solid.DesignRules;

/** Draws and weighs an unfinished device as soon as its design is sound. */
@Component
class DevicePreview {
    private final DeviceSolids solids;

    DevicePreview(DeviceSolids solids) {
        this.solids = solids;
    }

    /** The drawings and figures. */
    public record View(String stillSvg, String drawingSvg, MassView mass) {}

    /**
     * Null while something about the design is wrong.
     *
     * @param idPrefix starts every id within
     */
    @Nullable
    View of(DeviceDocument typed, String idPrefix) {
        if (!DesignRules.check(typed.design()).isEmpty()) {
            return null;
        }
        String name = typed.name().isBlank() ? "Device" : typed.name();
        Double density = typed.densityKgM3();
        boolean weighable = density != null && density >= 100 && density <= 23_000;
        return new View(
                DeviceFigures.stillSvg(solids.forPicture(typed.design()), name, "drawing still", idPrefix + "still"),
                DeviceFigures.threeViewSvg(typed.design(), name, idPrefix + "views"),
                MassView.of(solids.exact(typed.design()), weighable ? density : null));
    }
}
