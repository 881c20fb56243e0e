package org.vanewright.study.web;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.vanewright.platform.HeapShare;
import org.vanewright.platform.plot.DrawnPlot;
import org.vanewright.study.FlightState;
import org.vanewright.study.Place;
import org.vanewright.study.RowStudy;
import org.vanewright.study.RowTrial;
import org.vanewright.study.SpeedPoint;
import org.vanewright.study.StationFlow;
import org.vanewright.study.Study;

/**
 * Pictures of studies asked for lately. Each is drawn from an airframe's content, a flight and a place alone, which are its
 * key; who may see the airframe was decided before.
 */
@Component
class StudyPictures {
    private static final long KEPT_CHARACTERS = HeapShare.bytes(50);

    private final Cache<Key, Object> kept = Caffeine.newBuilder()
            .maximumWeight(KEPT_CHARACTERS)
            .weigher(StudyPictures::characters)
            .build();

    /** @param shown the row with its proportions, or the places drawn together */
    private record Key(String airframe, String surface, FlightState state, Object shown, String what) {}

    /**
     * What is drawn of one surface.
     *
     * @param sha256 of the airframe's content
     */
    record Wing(String sha256, String surface, FlightState state) {}

    RowPictures row(Wing wing, StationFlow here, Place place, @Nullable RowStudy device) {
        RowTrial trial = device == null ? null : device.row();
        Object shown = trial == null ? place : trial;
        return kept(RowPictures.class, wing, shown, "row", () -> RowPictures.of(here, place, device));
    }

    DrawnPlot span(Wing wing, List<Study.SpanLift> lift, List<Place> places, String id) {
        return kept(
                DrawnPlot.class, wing, places, "span " + id, () -> StudyPlots.span(wing.surface(), lift, places, id));
    }

    List<DrawnPlot> alongSpeed(Wing wing, List<SpeedPoint> points, List<Place> places, String id) {
        double speed = wing.state().speeds().calibratedAirspeedKt();
        return kept(Plots.class, wing, places, "speed " + id, () -> new Plots(SpeedPlots.of(points, places, speed, id)))
                .plots();
    }

    private record Plots(List<DrawnPlot> plots) {}

    private <T> T kept(Class<T> type, Wing wing, Object shown, String what, Supplier<T> drawn) {
        Key key = new Key(wing.sha256(), wing.surface(), wing.state(), shown, what);
        return type.cast(kept.get(key, k -> drawn.get()));
    }

    private static int characters(Key key, Object picture) {
        if (picture instanceof RowPictures row) {
            return row.characters();
        }
        List<DrawnPlot> plots = picture instanceof Plots many ? many.plots() : List.of((DrawnPlot) picture);
        return plots.stream().mapToInt(p -> p.svg().length()).sum() + 1;
    }
}
