package org.vanewright.engineering.gauge;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.section.SectionOutline;
import org.vanewright.engineering.wing.WingPanel;

/** The section of an untwisted panel at one station as a very fine polygon; knows nothing of the code under test. */
final class TrueSection {
    private static final GeometryFactory PLANE = new GeometryFactory();

    private final Polygon area;
    private final Geometry skin;
    private final Point2 leadingEdge;

    TrueSection(WingPanel panel, double stationMm) {
        double chord = panel.chordMm(stationMm);
        leadingEdge = new Point2(panel.leadingEdgeMm(stationMm), 0);
        List<Coordinate> ring = new ArrayList<>();
        for (Point2 p : SectionOutline.points(panel.innerSection(), 1e-6)) {
            ring.add(new Coordinate(leadingEdge.x() + chord * p.x(), chord * p.y()));
        }
        ring.add(ring.get(0));
        area = PLANE.createPolygon(ring.toArray(Coordinate[]::new));
        skin = area.getExteriorRing();
    }

    Point2 leadingEdge() {
        return leadingEdge;
    }

    /** From the skin outward; negative inside the wing. */
    double gapMm(Point2 place) {
        Geometry point = PLANE.createPoint(new Coordinate(place.x(), place.y()));
        return (area.contains(point) ? -1 : 1) * skin.distance(point);
    }
}
