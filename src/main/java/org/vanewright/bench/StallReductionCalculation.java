package org.vanewright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.flighttest.StallPoint;
import org.vanewright.engineering.flighttest.StallReduction;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;

/** Repeated stalls at the standard mass. */
public final class StallReductionCalculation {
    static final String METHOD =
            "V √(standard mass/(mass · load factor)) for each stall: the speed with the same lift coefficient. Where three"
                    + " stalls or more all have an entry rate and the rates spread over 0.2 kt/s or more, a straight line"
                    + " through speed over rate is read at 1 kt/s; else the mean stands. C_L = n m g/(½ ρ₀ V² S), with"
                    + " calibrated for equivalent airspeed.";
    static final List<String> SOURCES = List.of(
            "FAA, AC 23-8C, Flight Test Guide for Certification of Part 23 Airplanes, 2011 (rules from memory)",
            "14 CFR 23.201(b), amendment of 61 FR 5191, 1996: loss of speed of at most 1 kt/s");
    private static final double FAR_MASS = 0.1;
    private static final double RATE_SLACK_KT_PER_S = 0.2;

    private StallReductionCalculation() {}

    /** @throws InvalidInputException naming each field that is missing or out of range */
    public static StallReductionResult run(StallReductionRequest request) {
        List<StallPoint> points = points(request);
        double standardMassKg = number(request.standardMassKg());
        StallReduction reduction = StallReduction.of(points, standardMassKg, request.wingAreaM2());
        List<Double> lift = reduction.liftCoefficients();
        return new StallReductionResult(
                IntStream.range(0, points.size())
                        .mapToObj(i -> new StallReductionResult.Point(
                                reduction.standardAirspeedsKt().get(i), lift == null ? null : lift.get(i)))
                        .toList(),
                reduction.meanKt(),
                reduction.standardDeviationKt(),
                reduction.standardErrorKt(),
                reduction.entryRateSlope(),
                reduction.atOneKnotPerSecondKt(),
                METHOD,
                SOURCES,
                validity(points, reduction, standardMassKg));
    }

    /** The points of a request, checked. */
    public static List<StallPoint> points(StallReductionRequest request) {
        Checks checks = new Checks();
        checks.present("standardMassKg", request.standardMassKg(), "a number from 10 kg to 20000 kg");
        List<StallReductionRequest.@Nullable Point> given = request.points();
        checks.present("points", given, "one or more stalls");
        if (given == null || given.size() > StallReduction.MOST_POINTS) {
            checks.require(
                    given == null, "points", given == null ? null : given.size() + " points", "1 to 1000 points");
            throw new InvalidInputException(checks.problems());
        }
        List<StallPoint> points = new ArrayList<>();
        for (int i = 0; i < given.size(); i++) {
            StallPoint point = point(checks, "points[" + i + "]", given.get(i));
            if (point != null) {
                points.add(point);
            }
        }
        checks.throwIfAny();
        return points;
    }

    private static @Nullable StallPoint point(Checks checks, String path, StallReductionRequest.@Nullable Point point) {
        if (point == null) {
            checks.present(path, null, "a stall");
            return null;
        }
        Double speed = point.calibratedAirspeedKt();
        Double mass = point.massKg();
        checks.range(path + ".calibratedAirspeedKt", speed, 1, 400, "kt");
        checks.range(path + ".massKg", mass, 10, 20_000, "kg");
        checks.optionalRange(path + ".loadFactor", point.loadFactor(), 0.1, 10, "");
        checks.optionalRange(path + ".entryRateKtPerS", point.entryRateKtPerS(), 0, 20, "kt/s");
        double factor = Objects.requireNonNullElse(point.loadFactor(), 1.0);
        return speed == null || mass == null ? null : new StallPoint(speed, mass, factor, point.entryRateKtPerS());
    }

    /** Warnings of a reduction. */
    public static List<String> validity(List<StallPoint> points, StallReduction reduction, double standardMassKg) {
        List<String> validity = new ArrayList<>();
        if (points.size() == 1) {
            validity.add("One stall says nothing about scatter; repeat it.");
        }
        if (points.stream().anyMatch(p -> Math.abs(p.massKg() - standardMassKg) > FAR_MASS * standardMassKg)) {
            validity.add("A mass is more than 10 % off the standard one; the centre of gravity and the effect of the"
                    + " propeller may have changed with it (common practice, no source).");
        }
        List<Double> rates = points.stream()
                .map(StallPoint::entryRateKtPerS)
                .filter(Objects::nonNull)
                .toList();
        if (rates.size() < points.size()) {
            validity.add(
                    "Entry rates are missing, so the speed at 1 kt/s is the mean of all stalls, whatever their rates"
                            + " were.");
        } else if (reduction.entryRateSlope() == null && rates.stream().anyMatch(r -> off(r))) {
            validity.add("Entry rates are not near 1 kt/s and too much alike, or too few, for a slope; the speed at"
                    + " 1 kt/s is the mean.");
        } else if (reduction.entryRateSlope() != null && isOutside(rates)) {
            validity.add("All entry rates lie on one side of 1 kt/s: the speed there is an extrapolation.");
        }
        return List.copyOf(validity);
    }

    private static boolean off(double rate) {
        return Math.abs(rate - 1) > RATE_SLACK_KT_PER_S + 1e-12;
    }

    private static boolean isOutside(List<Double> rates) {
        return rates.stream().allMatch(r -> r < 1) || rates.stream().allMatch(r -> r > 1);
    }

    private static double number(@Nullable Double checked) {
        if (checked == null) {
            throw new IllegalStateException("checked before");
        }
        return checked;
    }
}
