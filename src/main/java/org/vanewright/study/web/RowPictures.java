package org.vanewright.study.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.drawing.SvgWriter;
import org.vanewright.platform.plot.DrawnMap;
import org.vanewright.platform.plot.DrawnPlot;
import org.vanewright.study.LayerDrawings;
import org.vanewright.study.Place;
import org.vanewright.study.RowStudy;
import org.vanewright.study.StationFlow;

/**
 * What is drawn of one place.
 *
 * @param sectionSvg section with its layer
 * @param magnification of the layer there
 * @param deviceSvg device in the layer; null without one
 * @param plots curves
 * @param maps over chord position and height
 */
public record RowPictures(
        String sectionSvg, int magnification, @Nullable String deviceSvg, List<DrawnPlot> plots, List<DrawnMap> maps) {
    static RowPictures of(StationFlow here, Place place, @Nullable RowStudy device) {
        String id = "row-" + place.index() + "-";
        LayerDrawings.Magnified section = LayerDrawings.section(here, place);
        return new RowPictures(
                SvgWriter.inline(section.drawing(), "drawing section", id + "section"),
                section.magnification(),
                device == null
                        ? null
                        : SvgWriter.inline(LayerDrawings.device(device), "drawing section", id + "device"),
                List.of(
                        StudyPlots.speed(here, place, id + "speed"),
                        StudyPlots.shape(here, place, id + "shape"),
                        StudyPlots.separation(here, place, id + "separation")),
                StudyMaps.of(here, place, id + "map-"));
    }

    int characters() {
        return sectionSvg.length()
                + (deviceSvg == null ? 0 : deviceSvg.length())
                + plots.stream().mapToInt(p -> p.svg().length()).sum()
                + maps.stream().mapToInt(m -> m.svg().length()).sum();
    }
}
