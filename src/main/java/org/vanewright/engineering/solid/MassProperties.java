package org.vanewright.engineering.solid;

import java.util.List;
import org.vanewright.engineering.input.Checks;

/**
 * Volume, surface and mass of a closed mesh. Volume and centre of mass by the divergence theorem, summed over the
 * tetrahedra between each triangle and the corner of the bounding box (Brian Mirtich, Fast and accurate computation of
 * polyhedral mass properties, 1996, describes the general method; for these moments the tetrahedra are enough).
 *
 * @param volumeMm3 enclosed
 * @param areaMm2 of the surface
 * @param boundingBoxMm lowest x, y, z, then highest x, y, z
 * @param centreOfMassMm x, y, z of a uniform solid
 * @param massG at the density given, printed solid
 */
public record MassProperties(
        double volumeMm3, double areaMm2, List<Double> boundingBoxMm, List<Double> centreOfMassMm, double massG) {
    private static final double GRAMS_PER_MM3_AND_KG_M3 = 1e-6;

    public MassProperties {
        boundingBoxMm = List.copyOf(boundingBoxMm);
        centreOfMassMm = List.copyOf(centreOfMassMm);
    }

    /**
     * @param mesh closed and oriented outward
     * @param densityKgM3 of the material, 1 to 25 000
     * @throws org.vanewright.engineering.input.InvalidInputException for a density out of range
     */
    public static MassProperties of(Mesh mesh, double densityKgM3) {
        Checks checks = new Checks();
        checks.range("densityKgM3", densityKgM3, 1, 25_000, "kg/m³");
        checks.throwIfAny();
        double[] moments = moments(mesh);
        double volume = moments[0];
        List<Double> centre = List.of(
                mesh.low(0) + moments[1] / volume,
                mesh.low(1) + moments[2] / volume,
                mesh.low(2) + moments[3] / volume);
        List<Double> box = List.of(mesh.low(0), mesh.low(1), mesh.low(2), mesh.high(0), mesh.high(1), mesh.high(2));
        return new MassProperties(volume, area(mesh), box, centre, volume * densityKgM3 * GRAMS_PER_MM3_AND_KG_M3);
    }

    /** Enclosed volume in mm³; negative where the triangles run clockwise seen from outside. */
    static double signedVolume(Mesh mesh) {
        return moments(mesh)[0];
    }

    /** Volume, then first moments about the low corner of the bounding box. */
    private static double[] moments(Mesh mesh) {
        double[] low = {mesh.low(0), mesh.low(1), mesh.low(2)};
        double[] sum = new double[4];
        for (int t = 0; t < mesh.triangleCount(); t++) {
            double[] n = mesh.doubleAreaVector(t);
            double six = 0;
            for (int axis = 0; axis < 3; axis++) {
                six += n[axis] * (mesh.coordinate(mesh.corner(t, 0), axis) - low[axis]);
            }
            sum[0] += six / 6;
            for (int axis = 0; axis < 3; axis++) {
                double corners = 0;
                for (int k = 0; k < 3; k++) {
                    corners += mesh.coordinate(mesh.corner(t, k), axis) - low[axis];
                }
                sum[axis + 1] += six / 6 * corners / 4;
            }
        }
        return sum;
    }

    private static double area(Mesh mesh) {
        double area = 0;
        for (int t = 0; t < mesh.triangleCount(); t++) {
            double[] n = mesh.doubleAreaVector(t);
            area += Math.sqrt(n[0] * n[0] + n[1] * n[1] + n[2] * n[2]) / 2;
        }
        return area;
    }
}
