package org.vanewright.study.web;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.study.FlightState;
import org.vanewright.study.Place;
import org.vanewright.study.RowTrial;

/**
 * A range beside a number field.
 *
 * @param low its left end
 * @param high its right end
 * @param step between values
 * @param now the value that was computed with
 */
public record Slider(double low, double high, double step, double now) {
    private static final double SLOWEST_KT = 25;
    private static final double FASTEST_KT = 120;

    /** By field: mass and speed. */
    static Map<String, Slider> ofFlight(AirframeDocument airframe, FlightState state) {
        Map<String, Slider> sliders = new LinkedHashMap<>();
        double speed = state.speeds().calibratedAirspeedKt();
        AirframeDocument.Speeds speeds = airframe.speeds();
        double low = or(speeds == null ? null : speeds.vs1Kt(), SLOWEST_KT);
        double high = or(speeds == null ? null : speeds.cruiseKt(), FASTEST_KT);
        sliders.put("calibratedAirspeedKt", round(Math.min(low, speed), Math.max(high, speed), 0.5, speed));
        AirframeDocument.Masses masses = airframe.masses();
        double most = or(masses == null ? null : masses.maximumKg(), 1.5 * state.massKg());
        double least = or(masses == null ? null : masses.emptyKg(), most / 2);
        sliders.put("massKg", round(least, most, 5, state.massKg()));
        return sliders;
    }

    /** By field: place and proportions of a row; of a bare place where it has no row. */
    static Map<String, Slider> ofRow(Place place, @Nullable RowTrial row) {
        Map<String, Slider> sliders = new LinkedHashMap<>();
        sliders.put("chordFraction", new Slider(0.02, 0.8, 0.005, place.chordFraction()));
        double height = or(place.heightMm(), 0);
        sliders.put("heightMm", new Slider(1, Math.max(30, Math.ceil(2 * height)), 0.5, Math.max(1, height)));
        double angle = row == null ? 0 : row.angleDeg();
        sliders.put("angleDeg", new Slider(0, 45, 1, angle));
        double pitch = row == null ? 0 : row.pitchMm();
        sliders.put("pitchMm", new Slider(5, Math.max(200, 10 * Math.ceil(pitch / 5)), 5, Math.max(5, pitch)));
        return sliders;
    }

    private static Slider round(double low, double high, double step, double now) {
        return new Slider(Math.floor(low), Math.ceil(high), step, now);
    }

    private static double or(@Nullable Double given, double otherwise) {
        return given == null ? otherwise : given;
    }
}
