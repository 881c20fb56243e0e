package org.vanewright.engineering.solid;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.vanewright.engineering.geometry.Point2;

/** Where the vanes stand on the base: from a vane's own frame to the device frame. */
final class VanePlaces {
    private final Dimensions d;

    VanePlaces(Dimensions d) {
        this.d = d;
    }

    /**
     * An outline of the vane, placed once for a single vane, twice for a pair: first at positive y, then its exact
     * mirror image, order reversed so that it stays anticlockwise.
     */
    List<List<Point2>> place(List<Point2> outline) {
        if (!d.paired()) {
            return List.of(outline.stream().map(this::placeSingle).toList());
        }
        List<Point2> right = outline.stream().map(this::placeRight).toList();
        List<Point2> left = new ArrayList<>();
        right.forEach(p -> left.add(new Point2(p.x(), -p.y())));
        Collections.reverse(left);
        return List.of(right, left);
    }

    private Point2 placeSingle(Point2 p) {
        // subtracting from the length keeps a flush trailing edge exactly in the base's rear plane
        return new Point2(d.baseLength() / 2 - d.inset() - (d.length() - p.x()), p.y());
    }

    private Point2 placeRight(Point2 p) {
        double half = d.length() / 2;
        Point2 turned = new Point2(p.x() - half, p.y()).rotated(d.toeIn());
        return turned.plus(new Point2(d.baseLength() / 2 - d.inset() - half * Math.cos(d.toeIn()), d.gap() / 2));
    }
}
