package org.vanewright.engineering.section;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.vanewright.engineering.geometry.Point2;

/**
 * A point of a coordinate file.
 *
 * @param line it was read from
 * @param at in the file's own unit
 */
record FilePoint(CoordinateLine line, Point2 at) {
    double x() {
        return at.x();
    }

    static List<FilePoint> reversed(List<FilePoint> points) {
        List<FilePoint> copy = new ArrayList<>(points);
        Collections.reverse(copy);
        return copy;
    }
}
