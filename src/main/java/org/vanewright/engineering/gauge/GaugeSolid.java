package org.vanewright.engineering.gauge;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;
import org.locationtech.jts.operation.polygonize.Polygonizer;
import org.vanewright.engineering.gauge.ShellMesh.Cell;
import org.vanewright.engineering.gauge.ShellMesh.Level;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.engineering.solid.Mesh;
import org.vanewright.engineering.template.TemplateRow;
import org.vanewright.engineering.unroll.FlatSkin;
import org.vanewright.engineering.wing.WingShape;

/**
 * The solid of a gauge: one closed mesh, letters raised from it.
 *
 * <p>Frame: origin at the leading edge of the section it is cut for, in the middle of the unit; x rearward, y to starboard,
 * z up, mm. The left gauge is the mirror image of the right one but for its letters, unless the row's vanes are turned the
 * same way on both wings.
 */
public final class GaugeSolid {
    /** Height of the letters over the shell. */
    public static final double RAISED_MM = 0.6;

    /** Greatest distance between shell and facet. */
    private static final double FINE_MM = 0.02;

    private static final double COARSE_MM = 0.15;
    private static final double LONGEST_FACET_MM = 8;
    private static final double SHORTEST_FACET_MM = 0.05;
    private static final int SHELL = 1;
    private static final int LETTER = 2;

    private final GaugeFrame frame;
    private final RowGauges row;
    private final Gauge gauge;
    private final GaugeOutline outline;
    private final Map<Double, NoseCurve> curves = new HashMap<>();
    private final NosePoint origin;

    private GaugeSolid(WingShape wing, TemplateRow template, RowGauges row, Gauge gauge) {
        this.frame = new GaugeFrame(wing, template.plan(), row.settings());
        this.row = row;
        this.gauge = gauge;
        this.outline = new GaugeOutline(frame, gauge);
        this.origin = curve(0).at(0);
    }

    /** @param revision of the layout, raised from the shell with row and hand */
    public static Mesh of(WingShape wing, TemplateRow template, RowGauges row, Gauge gauge, int revision) {
        GaugeSolid solid = new GaugeSolid(wing, template, row, gauge);
        return solid.mesh(new GaugeText(row, gauge, revision).on(solid.outline), FINE_MM);
    }

    /** Without letters and with coarser facets, for a picture. */
    public static Mesh forPicture(WingShape wing, TemplateRow template, RowGauges row, Gauge gauge) {
        return new GaugeSolid(wing, template, row, gauge).mesh(GaugeOutline.PLANE.createPolygon(), COARSE_MM);
    }

    /** Turned so that it stands on its port face, its letters on upright walls: no overhang but the nose. */
    public static Mesh forPrinting(Mesh mesh) {
        double[] coordinates = new double[3 * mesh.vertexCount()];
        int[] corners = new int[3 * mesh.triangleCount()];
        for (int v = 0; v < mesh.vertexCount(); v++) {
            coordinates[3 * v] = mesh.x(v);
            coordinates[3 * v + 1] = -mesh.z(v);
            coordinates[3 * v + 2] = mesh.y(v) - mesh.low(1);
        }
        for (int t = 0; t < mesh.triangleCount(); t++) {
            for (int k = 0; k < 3; k++) {
                corners[3 * t + k] = mesh.corner(t, k);
            }
        }
        return new Mesh(coordinates, corners);
    }

    private Mesh mesh(Geometry letters, double toleranceMm) {
        return ShellMesh.of(
                cells(letters, toleranceMm),
                this::place,
                FlatSkin.mirroredOutside(row.side(), row.wing() == Wing.LEFT));
    }

    private List<Cell> cells(Geometry letters, double toleranceMm) {
        List<LineString> lines = new ArrayList<>();
        rings(outline.body(), lines);
        rings(letters, lines);
        for (double s : facets(toleranceMm)) {
            double at = GaugeOutline.GRID.makePrecise(s);
            lines.add(GaugeOutline.PLANE.createLineString(new Coordinate[] {
                new Coordinate(at, GaugeOutline.GRID.makePrecise(-gauge.inboardMm())),
                new Coordinate(at, GaugeOutline.GRID.makePrecise(gauge.outboardMm()))
            }));
        }
        Geometry noded = UnaryUnionNG.union(
                GaugeOutline.PLANE.createMultiLineString(lines.toArray(LineString[]::new)), GaugeOutline.GRID);
        Polygonizer polygonizer = new Polygonizer();
        polygonizer.add(noded);
        IndexedPointInAreaLocator inBody = new IndexedPointInAreaLocator(outline.body());
        IndexedPointInAreaLocator inLetters = letters.isEmpty() ? null : new IndexedPointInAreaLocator(letters);
        List<Cell> cells = new ArrayList<>();
        for (Polygon polygon : inOrder(polygonizer)) {
            Coordinate inside = polygon.getInteriorPoint().getCoordinate();
            if (inBody.locate(inside) == Location.INTERIOR) {
                boolean raised = inLetters != null && inLetters.locate(inside) == Location.INTERIOR;
                cells.add(new Cell(polygon, raised ? LETTER : SHELL));
            }
        }
        return cells;
    }

    /** The library gives them in no order and begun anywhere; the same gauge must give the same bytes. */
    private static List<Polygon> inOrder(Polygonizer polygonizer) {
        List<Polygon> polygons = new ArrayList<>();
        for (Object found : polygonizer.getPolygons()) {
            polygons.add((Polygon) ((Polygon) found).norm());
        }
        polygons.sort(Polygon::compareTo);
        return polygons;
    }

    private static void rings(Geometry area, List<LineString> to) {
        for (int i = 0; i < area.getNumGeometries(); i++) {
            if (area.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
                to.add(polygon.getExteriorRing());
                for (int k = 0; k < polygon.getNumInteriorRing(); k++) {
                    to.add(polygon.getInteriorRingN(k));
                }
            }
        }
    }

    /** Where one facet ends and the next begins, without the ends themselves: closer where the skin turns more. */
    private List<Double> facets(double toleranceMm) {
        List<Double> at = new ArrayList<>();
        double end = gauge.rearMm();
        double s = -row.settings().wrapMm();
        while (true) {
            double step = Math.min(facet(s, toleranceMm), facet(s + facet(s, toleranceMm), toleranceMm));
            s += step;
            if (s >= end - SHORTEST_FACET_MM) {
                return at;
            }
            at.add(s);
        }
    }

    private double facet(double s, double toleranceMm) {
        double curvature = Math.abs(curve(0).at(Math.min(s, gauge.rearMm())).curvaturePerMm());
        if (curvature * LONGEST_FACET_MM < 1e-6) {
            return LONGEST_FACET_MM;
        }
        double radius = 1 / curvature;
        double turn = Math.sqrt(8 * toleranceMm / (radius + outsideMm(SHELL)));
        return Math.min(LONGEST_FACET_MM, Math.max(SHORTEST_FACET_MM, radius * turn));
    }

    private double outsideMm(int level) {
        double shell = level == 0 ? 0 : row.settings().thicknessMm();
        return row.settings().clearanceMm() + shell + (level == LETTER ? RAISED_MM : 0);
    }

    private NoseCurve curve(double v) {
        return curves.computeIfAbsent(v, key -> frame.curve(gauge.panel(), gauge.cutForMm() + key));
    }

    private double[] place(Level corner) {
        double v = corner.at().y;
        NosePoint p = curve(v).at(corner.at().x);
        double off = outsideMm(corner.level());
        double y = row.wing() == Wing.LEFT ? -v : v;
        return new double[] {p.x() + off * p.normalX() - origin.x(), y + 0.0, p.z() + off * p.normalZ() - origin.z()};
    }
}
