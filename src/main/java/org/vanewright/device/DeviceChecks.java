package org.vanewright.device;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.vanewright.engineering.solid.DesignRules;
import org.vanewright.engineering.solid.DeviceDesign;
import org.vanewright.engineering.solid.MassProperties;
import org.vanewright.engineering.solid.Mesh;
import org.vanewright.engineering.solid.MeshCheck;
import org.vanewright.record.Revision;
import org.vanewright.record.check.CheckResult;
import org.vanewright.record.check.SubmissionChecks;

/** What a reviewer of a device would measure first. Its bounds are common practice of club printing, without a source. */
@Component
class DeviceChecks implements SubmissionChecks<DeviceDocument> {
    private static final String NO_SOURCE = " (common practice, no source)";
    private static final double USUAL_DENSITY_KG_M3 = 1250;
    private static final double HEAVIEST_G = 10;
    private static final double LOWEST_VANE_MM = 3;
    private static final double HIGHEST_VANE_MM = 30;
    private static final double THINNEST_MM = 0.8;

    private final DeviceSolids solids;

    DeviceChecks(DeviceSolids solids) {
        this.solids = solids;
    }

    @Override
    public String kind() {
        return "device";
    }

    @Override
    public List<CheckResult> run(Revision<DeviceDocument> revision) {
        DeviceDocument device = revision.content();
        Mesh mesh = solids.exact(device.design());
        DeviceDesign full = DesignRules.withDefaults(device.design());
        return List.of(closed(mesh), mass(device, mesh), height(full), printable(full));
    }

    private static CheckResult closed(Mesh mesh) {
        MeshCheck check = MeshCheck.of(mesh);
        String name = "Solid is closed";
        return check.isSound()
                ? CheckResult.passed(
                        name, mesh.triangleCount() + " triangles: each edge has its counterpart, none is degenerate.")
                : CheckResult.failed(name, "The mesh is not sound: " + check);
    }

    private static CheckResult mass(DeviceDocument device, Mesh mesh) {
        Double given = device.densityKgM3();
        double density = given == null ? USUAL_DENSITY_KG_M3 : given;
        double grams = MassProperties.of(mesh, density).massG();
        return judged(
                "Mass",
                grams <= HEAVIEST_G,
                String.format(
                        Locale.ROOT,
                        "%.2f g at %.0f kg/m³; usual is at most %.0f g%s.",
                        grams,
                        density,
                        HEAVIEST_G,
                        NO_SOURCE));
    }

    private static CheckResult height(DeviceDesign design) {
        double height = number(Objects.requireNonNull(design.vane()).heightMm());
        return judged(
                "Height",
                height >= LOWEST_VANE_MM && height <= HIGHEST_VANE_MM,
                String.format(
                        Locale.ROOT,
                        "The vane is %.1f mm high; usual is %.0f to %.0f mm%s.",
                        height,
                        LOWEST_VANE_MM,
                        HIGHEST_VANE_MM,
                        NO_SOURCE));
    }

    private static CheckResult printable(DeviceDesign design) {
        double vane = number(Objects.requireNonNull(design.vane()).thicknessMm());
        double base = number(Objects.requireNonNull(design.base()).thicknessMm());
        return judged(
                "Thickness for printing",
                Math.min(vane, base) >= THINNEST_MM,
                String.format(
                        Locale.ROOT,
                        "Vane %.2f mm, base %.2f mm; two lines of a 0.4 mm nozzle take %.1f mm%s.",
                        vane,
                        base,
                        THINNEST_MM,
                        NO_SOURCE));
    }

    private static CheckResult judged(String name, boolean usual, String detail) {
        return usual ? CheckResult.passed(name, detail) : CheckResult.noticed(name, detail);
    }

    private static double number(@Nullable Double measure) {
        return measure == null ? 0 : measure;
    }
}
