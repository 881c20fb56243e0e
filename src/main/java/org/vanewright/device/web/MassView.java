package org.vanewright.device.web;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.vanewright.device.PrintMaterial;
import org.vanewright.engineering.solid.MassProperties;
import org.vanewright.engineering.solid.Mesh;

/**
 * What a solid measures and weighs, in words with as many digits as they deserve.
 *
 * @param mass at the density given; null where none was
 * @param materials the range for each class of material
 */
public record MassView(
        String volume,
        String area,
        String box,
        String centre,
        @Nullable String mass,
        @Nullable String density,
        List<MaterialRow> materials,
        int triangles) {
    private static final double UNIT_DENSITY_KG_M3 = 1000;

    /** A class of material: density and mass from low to high. */
    public record MaterialRow(String material, String density, String mass) {}

    static MassView of(Mesh mesh, @Nullable Double densityKgM3) {
        MassProperties p = MassProperties.of(mesh, densityKgM3 == null ? UNIT_DENSITY_KG_M3 : densityKgM3);
        double volume = p.volumeMm3();
        List<Double> box = p.boundingBoxMm();
        List<Double> centre = p.centreOfMassMm();
        return new MassView(
                format("%.1f mm³", volume),
                format("%.1f mm²", p.areaMm2()),
                format(
                        "%.2f × %.2f × %.2f mm",
                        box.get(3) - box.get(0), box.get(4) - box.get(1), box.get(5) - box.get(2)),
                format("x %.2f, y %.2f, z %.2f mm", centre.get(0), flat(centre.get(1)), centre.get(2)),
                densityKgM3 == null ? null : format("%.2f g", p.massG()),
                densityKgM3 == null ? null : format("%.0f kg/m³", densityKgM3),
                Arrays.stream(PrintMaterial.values()).map(m -> row(m, volume)).toList(),
                mesh.triangleCount());
    }

    private static MaterialRow row(PrintMaterial m, double volumeMm3) {
        return new MaterialRow(
                m.label(),
                format("%.0f to %.0f kg/m³", m.lowKgM3(), m.highKgM3()),
                format("%.2f to %.2f g", m.lowKgM3() * volumeMm3 * 1e-6, m.highKgM3() * volumeMm3 * 1e-6));
    }

    /** A rounding error off the plane of symmetry is no offset, and no minus sign. */
    private static double flat(double mm) {
        return Math.abs(mm) < 0.005 ? 0 : mm;
    }

    private static String format(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values).replace(' ', '\u00a0');
    }
}
