package org.vanewright.engineering.tuft;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where the flow stops to lie quiet, along the span. At each station: the most forward tuft from which every tuft that
 * was seen, it and those behind it, is not steady. A station whose rearmost tuft seen is steady has no point. The true
 * place lies between the steady tuft ahead, if there is one, and that tuft.
 *
 * @param points one for each station that has any, in the grid's order
 */
public record SeparationLine(List<Point> points) {
    public SeparationLine {
        points = List.copyOf(points);
    }

    /**
     * One station's.
     *
     * @param left side of the aircraft
     * @param station place in the grid's stations
     * @param row place in the grid's chord fractions
     * @param stationMm span station
     * @param chordFraction of the foremost tuft that is not steady, all seen behind it not steady either
     * @param steadyFraction chord fraction of the nearest steady tuft ahead; null where none was seen
     */
    public record Point(
            boolean left,
            int station,
            int row,
            double stationMm,
            double chordFraction,
            @Nullable Double steadyFraction) {}

    public static SeparationLine of(TuftSurvey survey) {
        TuftGrid grid = survey.grid();
        List<Point> points = new ArrayList<>();
        for (int first = 0; first < grid.size(); first += grid.rows()) {
            Point point = at(survey, first);
            if (point != null) {
                points.add(point);
            }
        }
        return new SeparationLine(points);
    }

    private static @Nullable Point at(TuftSurvey survey, int first) {
        List<Tuft> tufts = survey.grid().tufts();
        Tuft foremost = null;
        Double steady = null;
        for (int i = first + survey.grid().rows() - 1; i >= first && steady == null; i--) {
            TuftState state = survey.states().get(i);
            if (state == TuftState.STEADY) {
                steady = tufts.get(i).chordFraction();
            } else if (state.seen()) {
                foremost = tufts.get(i);
            }
        }
        return foremost == null
                ? null
                : new Point(
                        foremost.left(),
                        foremost.station(),
                        foremost.row(),
                        foremost.stationMm(),
                        foremost.chordFraction(),
                        steady);
    }

    /** Runs of neighbouring stations on one side, to be drawn as one line each. */
    public List<List<Point>> runs() {
        List<List<Point>> runs = new ArrayList<>();
        Point before = null;
        for (Point point : points) {
            boolean joined = before != null && before.left() == point.left() && before.station() + 1 == point.station();
            if (!joined) {
                runs.add(new ArrayList<>());
            }
            runs.get(runs.size() - 1).add(point);
            before = point;
        }
        return runs;
    }
}
