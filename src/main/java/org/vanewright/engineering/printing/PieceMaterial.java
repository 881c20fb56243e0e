package org.vanewright.engineering.printing;

import org.vanewright.engineering.solid.MassProperties;
import org.vanewright.engineering.solid.Mesh;
import org.vanewright.engineering.solid.Plate;

/**
 * Material that one printed piece takes. The shell is taken as surface times its thickness, but no more than the whole
 * solid; the rest is filled in part; the raft is a slab under the foot's bounding box and a margin. Edges and corners are
 * counted twice by the first, so that thin pieces come out as solid, which is how they print.
 *
 * @param solidMm3 the solid's own volume
 * @param shellMm3 of its shell
 * @param infillMm3 of what fills the rest
 * @param raftMm3 of the raft
 * @param densityKgM3 of the material
 */
public record PieceMaterial(
        double solidMm3, double shellMm3, double infillMm3, double raftMm3, double densityKgM3) {
    private static final double GRAMS_PER_MM3_AND_KG_M3 = 1e-6;

    /** @param mesh a closed solid, as it is printed */
    public static PieceMaterial of(Mesh mesh, PrintSettings settings) {
        MassProperties solid = MassProperties.of(mesh, settings.densityKgM3());
        double shell = Math.min(solid.volumeMm3(), solid.areaMm2() * settings.shellMm());
        double infill = (solid.volumeMm3() - shell) * settings.infillFraction();
        return new PieceMaterial(
                solid.volumeMm3(), shell, infill, raft(mesh, settings), settings.densityKgM3());
    }

    private static double raft(Mesh mesh, PrintSettings settings) {
        double[] foot = Plate.Placement.alone(mesh).footprint(mesh);
        double margins = 2 * settings.raftMarginMm();
        return (foot[2] - foot[0] + margins) * (foot[3] - foot[1] + margins) * settings.raftMm();
    }

    /** Everything the nozzle lays down for it. */
    public double depositedMm3() {
        return shellMm3 + infillMm3 + raftMm3;
    }

    /** Mass of everything laid down. */
    public double depositedG() {
        return depositedMm3() * densityKgM3 * GRAMS_PER_MM3_AND_KG_M3;
    }

    /** Mass of the piece without its raft: what flies. */
    public double pieceG() {
        return (shellMm3 + infillMm3) * densityKgM3 * GRAMS_PER_MM3_AND_KG_M3;
    }
}
