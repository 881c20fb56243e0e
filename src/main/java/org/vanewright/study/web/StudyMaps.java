package org.vanewright.study.web;

import java.util.ArrayList;
import java.util.List;
import org.vanewright.platform.plot.DrawnMap;
import org.vanewright.platform.plot.MapPlot;
import org.vanewright.platform.plot.PlotAxis;
import org.vanewright.platform.plot.PlotMark;
import org.vanewright.study.Place;
import org.vanewright.study.PlacementMap;
import org.vanewright.study.StationFlow;

/** Maps of a study over chord position and height. */
final class StudyMaps {
    /** Borders between colours, in layers. */
    private static final List<Double> THICKNESSES = List.of(0.2, 0.5, 1.0, 2.0);
    /** Borders between colours, in device heights: those that recommendations speak of, and what lies between. */
    private static final List<Double> DISTANCES = List.of(5.0, 10.0, 30.0, 100.0);

    private StudyMaps() {}

    /** The second one only where something separates to which a distance could be counted. */
    static List<DrawnMap> of(StationFlow here, Place place, String id) {
        PlacementMap map = PlacementMap.of(here, place);
        List<PlotMark> marks = marks(map, place);
        List<DrawnMap> drawn = new ArrayList<>();
        drawn.add(DrawnMap.of(
                plot("Height over boundary-layer thickness", "h/δ", map, map.heightToThickness(), THICKNESSES, marks),
                id + "thickness",
                "Height over the thickness of the layer, at this condition; empty behind separation."));
        if (map.separationX() != null) {
            drawn.add(DrawnMap.of(
                    plot("Distance to separation in heights", "Heights", map, map.distanceToHeight(), DISTANCES, marks),
                    id + "distance",
                    "Distance along the skin to where the layer separates"
                            + (map.separatesHere()
                                    ? " at this condition,"
                                    : " at the largest lift claimed, since it stays attached at this condition,")
                            + " counted in heights of the device; empty behind it."));
        }
        return drawn;
    }

    private static List<PlotMark> marks(PlacementMap map, Place place) {
        List<PlotMark> marks = new ArrayList<>();
        double last = map.chordFractions()[map.chordFractions().length - 1];
        if (map.separationX() != null && map.separationX() <= last) {
            marks.add(new PlotMark("separates", map.separationX(), null));
        }
        marks.add(
                new PlotMark(place.heightMm() == null ? "here" : "this row", place.chordFraction(), place.heightMm()));
        return marks;
    }

    private static MapPlot plot(
            String title, String value, PlacementMap map, double[][] values, List<Double> steps, List<PlotMark> marks) {
        double last = map.chordFractions()[map.chordFractions().length - 1];
        double highest = map.heightsMm()[map.heightsMm().length - 1];
        return new MapPlot(
                title + ", by chord position and height",
                PlotAxis.of("x/c", 0, last * 1.02),
                PlotAxis.of("Height, mm", 0, highest * 1.03),
                value,
                map.chordFractions(),
                map.heightsMm(),
                values,
                steps,
                marks);
    }
}
