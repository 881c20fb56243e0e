package org.vanewright.engineering.flighttest;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.SingularValueDecomposition;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer.Optimum;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.flighttest.GpsAirspeed.Directions;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;

/** Solves for airspeed, wind towards the east and wind towards the north, in this order everywhere. */
final class GpsSolution {
    private static final double FASTEST_KT = 1_000;
    /** Tips nearly on one line, or headings of nearly one direction: an answer would be made of rounding. */
    private static final double WORST_CONDITION = 1e4;

    private static final double LEAST_SPREAD_DEG = 10;

    private static final int EVALUATIONS = 1_000;

    private GpsSolution() {}

    static GpsAirspeed of(Directions known, List<GpsLeg> legs) {
        check(known, legs);
        GpsModel model = known == Directions.TRACKS ? new TrackModel(legs) : new HeadingModel(legs);
        double[] start = start(model, known);
        if (legs.size() == GpsAirspeed.FEWEST_LEGS) {
            return result(known, legs, start, new double[legs.size()], null);
        }
        try {
            Optimum best = new LevenbergMarquardtOptimizer()
                    .optimize(new LeastSquaresBuilder()
                            .start(start)
                            .target(new double[legs.size()])
                            .model(model::residuals, model::slopes)
                            .maxEvaluations(EVALUATIONS)
                            .maxIterations(EVALUATIONS)
                            .build());
            double[] found = best.getPoint().toArray();
            return result(known, legs, found, model.residuals(found), best.getCovariances(1e-14));
        } catch (MathRuntimeException e) {
            throw refused(known);
        }
    }

    private static void check(Directions known, List<GpsLeg> legs) {
        Checks checks = new Checks();
        checks.require(
                legs.size() >= GpsAirspeed.FEWEST_LEGS && legs.size() <= GpsAirspeed.MOST_LEGS,
                "legs",
                legs.size() + " legs",
                GpsAirspeed.FEWEST_LEGS + " to " + GpsAirspeed.MOST_LEGS + " legs");
        checks.throwIfAny();
        String direction = known == Directions.TRACKS ? "trackDeg" : "headingDeg";
        for (int i = 0; i < legs.size(); i++) {
            String leg = "legs[" + i + "].";
            checks.range(leg + "groundSpeedKt", legs.get(i).groundSpeedKt(), 0, FASTEST_KT, "kt");
            checks.range(leg + direction, legs.get(i).directionDeg(), 0, 360, "°");
        }
        checks.throwIfAny();
        if (spread(legs) < LEAST_SPREAD_DEG) {
            throw refused(known);
        }
    }

    /** The linear problem: exact for three legs, near enough to start from for more. */
    private static double[] start(GpsModel model, Directions known) {
        double[][] rows = model.linearRows();
        RealMatrix matrix = MatrixUtils.createRealMatrix(rows);
        SingularValueDecomposition decomposition = new SingularValueDecomposition(matrix);
        if (!(decomposition.getConditionNumber() < WORST_CONDITION)) {
            throw refused(known);
        }
        double[] solved = decomposition
                .getSolver()
                .solve(MatrixUtils.createRealVector(model.linearRight()))
                .toArray();
        double[] start = model.fromLinear(solved);
        if (start == null || !(start[0] > 0) || start[0] > FASTEST_KT || Math.hypot(start[1], start[2]) > FASTEST_KT) {
            throw refused(known);
        }
        return start;
    }

    private static InvalidInputException refused(Directions known) {
        return new InvalidInputException(new FieldProblem(
                "legs",
                "legs that no one airspeed and wind explain",
                (known == Directions.TRACKS ? "tracks" : "headings")
                        + " that point different ways, such as thirds of a circle, with ground speeds that one airspeed"
                        + " below 1000 kt and one wind explain"));
    }

    private static GpsAirspeed result(
            Directions known, List<GpsLeg> legs, double[] found, double[] residuals, @Nullable RealMatrix inverse) {
        double trueKt = found[0];
        if (!(trueKt > 0) || !(trueKt <= FASTEST_KT) || !(Math.hypot(found[1], found[2]) <= FASTEST_KT)) {
            throw refused(known);
        }
        double squares = Arrays.stream(residuals).map(r -> r * r).sum();
        double variance = inverse == null ? 0 : squares / (legs.size() - 3);
        return new GpsAirspeed(
                known,
                trueKt,
                Math.hypot(found[1], found[2]),
                bearing(-found[1], -found[2]),
                legs.stream().map(leg -> other(known, leg, found)).toList(),
                Arrays.stream(residuals).boxed().toList(),
                inverse == null ? null : (Double) Math.sqrt(variance),
                inverse == null ? null : covariance(inverse, variance),
                spread(legs));
    }

    private static List<List<Double>> covariance(RealMatrix inverse, double variance) {
        return Arrays.stream(inverse.scalarMultiply(variance).getData())
                .map(row -> Arrays.stream(row).boxed().toList())
                .toList();
    }

    private static double other(Directions known, GpsLeg leg, double[] found) {
        return known == Directions.TRACKS
                ? bearing(leg.groundSpeedKt() * leg.east() - found[1], leg.groundSpeedKt() * leg.north() - found[2])
                : bearing(found[0] * leg.east() + found[1], found[0] * leg.north() + found[2]);
    }

    private static double bearing(double east, double north) {
        double degrees = Math.toDegrees(Math.atan2(east, north));
        // adding a full turn to a hair below 0 rounds to 360, and 0 − 0.0 would be a negative zero
        return degrees < 0 ? (degrees + 360) % 360 : degrees + 0.0;
    }

    private static double spread(List<GpsLeg> legs) {
        double[] sorted = legs.stream()
                .mapToDouble(leg -> leg.directionDeg() % 360)
                .sorted()
                .toArray();
        double gap = sorted[0] + 360 - sorted[sorted.length - 1];
        for (int i = 1; i < sorted.length; i++) {
            gap = Math.max(gap, sorted[i] - sorted[i - 1]);
        }
        return 360 - gap;
    }
}
