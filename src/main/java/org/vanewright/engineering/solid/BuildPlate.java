package org.vanewright.engineering.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.solid.Plate.Placement;

/**
 * Sets copies of a piece on a printer's bed in a grid: standing on their trailing edges where vane and base end in one
 * plane, otherwise lying on their bases. Batches of 8 to 16 are common practice, no source.
 */
public final class BuildPlate {
    /** Kept free along the edge of the bed. */
    public static final double MARGIN_MM = 5;

    private static final int MOST = 5000;
    private static final double SAME_MM = 1e-6;

    private final double bedWidth;
    private final double bedDepth;
    private final double width;
    private final double depth;
    private final double spacing;
    private final Mesh mesh;
    private final boolean standing;

    private BuildPlate(Mesh mesh, double bedWidth, double bedDepth, double spacing) {
        this.mesh = mesh;
        this.bedWidth = bedWidth;
        this.bedDepth = bedDepth;
        this.spacing = spacing;
        standing = stands(mesh);
        width = standing ? extent(mesh, 1) : extent(mesh, 0);
        depth = standing ? extent(mesh, 2) : extent(mesh, 1);
    }

    /**
     * @param bedWidthMm and {@code bedDepthMm} of the printer, 50 to 1000
     * @param count of copies, 1 to 5000
     * @param spacingMm clear distance between copies, 1 to 50
     * @return as many plates as it takes, each filled row by row from the front; the last may be part full
     * @throws InvalidInputException for values out of range, or a bed too small for one piece
     */
    public static List<Plate> arrange(Mesh mesh, double bedWidthMm, double bedDepthMm, int count, double spacingMm) {
        Checks checks = new Checks();
        checks.range("bedWidthMm", bedWidthMm, 50, 1000, "mm");
        checks.range("bedDepthMm", bedDepthMm, 50, 1000, "mm");
        checks.range("spacingMm", spacingMm, 1, 50, "mm");
        checks.require(count >= 1 && count <= MOST, "count", count, "1 to " + MOST + " pieces");
        checks.throwIfAny();
        BuildPlate plate = new BuildPlate(mesh, bedWidthMm, bedDepthMm, spacingMm);
        checks.require(plate.columns() > 0, "bedWidthMm", bedWidthMm, "at least " + need(plate.width));
        checks.require(plate.rows() > 0, "bedDepthMm", bedDepthMm, "at least " + need(plate.depth));
        checks.throwIfAny();
        return plate.fill(count);
    }

    private static String need(double extent) {
        return Math.ceil(extent + 2 * MARGIN_MM) + " mm for this piece";
    }

    private int columns() {
        return (int) Math.floor((bedWidth - 2 * MARGIN_MM + spacing) / (width + spacing) + 1e-9);
    }

    private int rows() {
        return (int) Math.floor((bedDepth - 2 * MARGIN_MM + spacing) / (depth + spacing) + 1e-9);
    }

    private List<Plate> fill(int count) {
        int perPlate = columns() * rows();
        int needed = (count + perPlate - 1) / perPlate;
        List<Plate> plates = new ArrayList<>();
        for (int p = 0; p < needed; p++) {
            int here = Math.min(perPlate, count - p * perPlate);
            List<Placement> placements = new ArrayList<>();
            for (int i = 0; i < here; i++) {
                placements.add(place(i, here, p * perPlate + i + 1));
            }
            plates.add(new Plate(p + 1, needed, bedWidth, bedDepth, placements));
        }
        return plates;
    }

    /** The block of pieces is centred on the bed. */
    private Placement place(int i, int here, int order) {
        int across = Math.min(columns(), here);
        int back = (here + columns() - 1) / columns();
        double left = (bedWidth - across * width - (across - 1) * spacing) / 2;
        double front = (bedDepth - back * depth - (back - 1) * spacing) / 2;
        int column = i % columns();
        int row = i / columns();
        double x = left + column * (width + spacing);
        double y = front + row * (depth + spacing);
        return placement(mesh, standing, order, x, y);
    }

    /** One copy at the origin, for a file that holds no plate. */
    static Placement alone(Mesh mesh) {
        return placement(mesh, stands(mesh), 1, 0, 0);
    }

    /** Whether the rear end is a plane that reaches from the base to the top of the vane, to stand on. */
    public static boolean stands(Mesh mesh) {
        double rear = mesh.high(0) - SAME_MM;
        double top = mesh.high(2) - SAME_MM;
        return IntStream.range(0, mesh.vertexCount()).anyMatch(v -> mesh.x(v) >= rear && mesh.z(v) >= top);
    }

    private static Placement placement(Mesh mesh, boolean standing, int order, double x, double y) {
        return standing
                ? new Placement(order, x - mesh.low(1), y + mesh.high(2), mesh.high(0), true)
                : new Placement(order, x - mesh.low(0), y - mesh.low(1), -mesh.low(2), false);
    }

    private static double extent(Mesh mesh, int axis) {
        return mesh.high(axis) - mesh.low(axis);
    }
}
