package org.vanewright.engineering.solid;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.vanewright.engineering.geometry.Point2;

/** What a drawing shows of a device: plan outlines, and silhouettes along x and along y, from the solid's own points. */
final class DeviceOutlines {
    private final Dimensions d;
    private final BaseShape base;
    private final VaneShape vane;
    private final Footprints footprints;

    DeviceOutlines(Dimensions d) {
        this.d = d;
        base = new BaseShape(d);
        vane = new VaneShape(d);
        footprints = new Footprints(d, base, vane);
    }

    List<Point2> base() {
        return base.outline().points();
    }

    List<Point2> upperFace() {
        return base.upper();
    }

    double upperZ() {
        return base.upperZ();
    }

    /** Feet of the fillets; the vanes themselves where there is no fillet. */
    List<List<Point2>> fillets() {
        return footprints.rings();
    }

    /** The vanes' sections at the root, as if there were no fillet. */
    List<List<Point2>> roots() {
        return new VanePlaces(d).place(new VaneShape(d.withFillet(0)).at(0));
    }

    List<List<Point2>> tips() {
        return new VanePlaces(d).place(vane.at(d.height()));
    }

    Optional<IndexMark> mark() {
        return d.indexMark() ? IndexMark.fitting(d, footprints) : Optional.empty();
    }

    /** The base from the side: x right, z up. */
    List<Point2> baseFromTheSide() {
        List<Point2> outline = new ArrayList<>();
        double a = d.baseLength() / 2;
        base().stream()
                .mapToDouble(Point2::x)
                .distinct()
                .sorted()
                .forEach(x -> outline.add(new Point2(x, base.undersideZ(x))));
        double rearBevel = d.flush() ? 0 : d.bevel();
        outline.add(new Point2(a, upperZ() - rearBevel));
        outline.add(new Point2(a - rearBevel, upperZ()));
        outline.add(new Point2(-a + d.bevel(), upperZ()));
        outline.add(new Point2(-a, upperZ() - d.bevel()));
        return distinct(outline);
    }

    /** The base from the front, seen along the x axis: y right, z up. */
    List<Point2> baseFromTheEnd() {
        double w = d.baseWidth() / 2;
        double low = Math.min(0, base.undersideZ(d.baseLength() / 2));
        return distinct(List.of(
                new Point2(-w, low),
                new Point2(w, low),
                new Point2(w, upperZ() - d.bevel()),
                new Point2(w - d.bevel(), upperZ()),
                new Point2(-w + d.bevel(), upperZ()),
                new Point2(-w, upperZ() - d.bevel())));
    }

    /** Each vane from the side (x right, z up) or, by y, from the end (y right, z up). */
    List<List<Point2>> vaneSilhouettes(ToDoubleFunction<Point2> across) {
        List<List<Point2>> silhouettes = new ArrayList<>();
        VanePlaces places = new VanePlaces(d);
        int vanes = d.paired() ? 2 : 1;
        for (int which = 0; which < vanes; which++) {
            List<Point2> near = new ArrayList<>();
            List<Point2> far = new ArrayList<>();
            for (double z : vane.levels()) {
                List<Point2> section = places.place(vane.at(z)).get(which);
                near.add(new Point2(section.stream().mapToDouble(across).min().orElseThrow(), upperZ() + z));
                far.add(new Point2(section.stream().mapToDouble(across).max().orElseThrow(), upperZ() + z));
            }
            Collections.reverse(far);
            near.addAll(far);
            silhouettes.add(near);
        }
        return silhouettes;
    }

    private static List<Point2> distinct(List<Point2> points) {
        List<Point2> kept = new ArrayList<>();
        for (Point2 p : points) {
            if (kept.isEmpty() || !kept.get(kept.size() - 1).equals(p)) {
                kept.add(p);
            }
        }
        return kept;
    }
}
