package org.vanewright.study;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import org.springframework.stereotype.Component;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.engineering.air.AirState;
import org.vanewright.engineering.flow.FlowCondition;
import org.vanewright.engineering.flow.FlowResult;
import org.vanewright.engineering.wing.WingShape;
import org.vanewright.record.Revision;

/**
 * Flows asked for lately. They depend on nothing but the content of an airframe and its flight, both of which are the key,
 * so they stay right for ever; two who ask for the same at once wait for one computation. Whoever asks has been shown the
 * airframe's revision by its service, which decides who may see it.
 */
@Component
class KeptFlows {
    private static final long KEPT_SECTIONS = 24;
    private static final long KEPT_LIFTS = 500;
    private static final long KEPT_STATIONS = 150;
    private static final long KEPT_LEVELS = 400;

    private final Cache<SurfaceKey, WingSections> sections = Caffeine.newBuilder()
            .maximumWeight(KEPT_SECTIONS)
            .weigher((SurfaceKey key, WingSections wing) -> wing.distinct().size())
            .build();
    private final Cache<FlightKey, WingLift> lifts =
            Caffeine.newBuilder().maximumSize(KEPT_LIFTS).build();
    private final Cache<StationKey, StationFlow> stations =
            Caffeine.newBuilder().maximumSize(KEPT_STATIONS).build();
    private final Cache<StationKey, FlowResult> levels =
            Caffeine.newBuilder().maximumSize(KEPT_LEVELS).build();

    private record SurfaceKey(String airframeSha256, String surface) {}

    private record FlightKey(SurfaceKey surface, double massKg, AirState air, double calibratedAirspeedKt) {}

    private record StationKey(FlightKey flight, double stationMm) {}

    /** A surface of an airframe. */
    Wing wing(Revision<AirframeDocument> airframe, String surface, WingShape shape) {
        double share = WeightShares.of(airframe.content(), surface);
        return new Wing(new SurfaceKey(airframe.sha256(), surface), shape, share);
    }

    /** Flows over one surface. */
    final class Wing {
        private final SurfaceKey key;
        private final WingShape shape;
        private final double share;

        private Wing(SurfaceKey key, WingShape shape, double share) {
            this.key = key;
            this.shape = shape;
            this.share = share;
        }

        private WingSections sections() {
            return sections.get(key, k -> new WingSections(shape));
        }

        private FlightKey flight(FlightState state) {
            return new FlightKey(
                    key, state.massKg(), state.air(), state.speeds().calibratedAirspeedKt());
        }

        WingLift lift(FlightState state) {
            return lifts.get(flight(state), k -> new WingLift(sections(), state, share));
        }

        /** With a sweep of the angle of attack. */
        StationFlow station(FlightState state, double stationMm) {
            return stations.get(
                    new StationKey(flight(state), stationMm),
                    k -> StationFlows.at(stationMm, sections(), lift(state), state));
        }

        /** At the lift of level flight, whether or not the method claims so much. */
        FlowResult level(FlightState state, double stationMm) {
            return levels.get(new StationKey(flight(state), stationMm), k -> {
                FlowCondition condition = FlowCondition.free(reynolds(state, stationMm));
                return sections().at(stationMm).flow().atLift(lift(state).at(stationMm), condition);
            });
        }

        double reynolds(FlightState state, double stationMm) {
            return state.chordReynolds(chordMm(stationMm));
        }

        double chordMm(double stationMm) {
            return sections().chordMm(stationMm);
        }
    }
}
