package org.vanewright.engineering.section;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.input.InvalidInputException;

/** Checks an ordered outline and moves, turns and scales it to a chord from (0, 0) to (1, 0). */
final class NormalisedLoop {
    private NormalisedLoop() {}

    /** @throws InvalidInputException naming the line where the outline crosses itself or its trailing edge gapes */
    static List<List<Double>> of(List<FilePoint> loop) {
        Point2[] points = loop.stream().map(FilePoint::at).toArray(Point2[]::new);
        checkTrailingEdge(loop, points);
        OutlineChecks.selfCrossing(points).ifPresent(i -> {
            int next = loop.get((i + 1) % points.length).line().number();
            throw new InvalidInputException(loop.get(i)
                    .line()
                    .problem("the outline must not cross or touch itself, but it does between this point and that of"
                            + " line " + next));
        });
        SplinedOutline outline = SplinedOutline.through(points);
        Point2 nose = outline.leadingEdge();
        Point2 chord = outline.trailingEdge().minus(nose);
        double scale = 1 / chord.norm();
        double angle = -Math.atan2(chord.y(), chord.x());
        return Stream.of(points)
                .map(p -> p.minus(nose).rotated(angle).times(scale))
                .map(p -> List.of(p.x(), p.y()))
                .toList();
    }

    private static void checkTrailingEdge(List<FilePoint> loop, Point2[] points) {
        Point2 first = points[0];
        Point2 last = points[points.length - 1];
        Point2 middle = first.plus(last).times(0.5);
        int nose = SplinedOutline.farthestFrom(middle, points);
        double chord = points[nose].distanceTo(middle);
        double gap = first.distanceTo(last) / chord;
        if (!(gap <= OutlineChecks.WIDEST_TRAILING_EDGE)) {
            throw new InvalidInputException(loop.get(loop.size() - 1)
                    .line()
                    .problem(String.format(
                            Locale.ROOT,
                            "the outline must come back to the trailing edge it starts from, within a quarter of the"
                                    + " chord; here it is %.2f chord away",
                            gap)));
        }
    }
}
