package org.vanewright.campaign.web;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.airframe.SurfaceDrawings;
import org.vanewright.airframe.Surfaces;
import org.vanewright.campaign.TuftGridDocument;
import org.vanewright.campaign.Tufts;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.tuft.SeparationLine;
import org.vanewright.engineering.tuft.Tuft;
import org.vanewright.engineering.tuft.TuftDifference;
import org.vanewright.engineering.tuft.TuftGrid;
import org.vanewright.engineering.tuft.TuftState;
import org.vanewright.engineering.tuft.TuftSurvey;
import org.vanewright.engineering.tuft.Wings;
import org.vanewright.engineering.wing.PlanSheet;
import org.vanewright.engineering.wing.WingPanel;
import org.vanewright.platform.page.Units;

/** Draws the maps of one grid. */
final class TuftMaps {
    private static final double MARGIN = 3;
    private static final double LETTERING = 8;
    private static final double LABEL_ROOM = 17;

    private final List<WingPanel> panels;
    private final TuftGrid grid;
    private final List<Boolean> sides;
    private final PlanSheet sheet;
    private final Units units;

    TuftMaps(AirframeDocument airframe, TuftGridDocument document, Units units) {
        this.panels =
                Surfaces.toWing(SurfaceDrawings.named(airframe, Objects.requireNonNullElse(document.surface(), "")));
        this.grid = Tufts.grid(airframe, document);
        this.sides = Objects.requireNonNullElse(document.wings(), Wings.RIGHT).sides();
        this.sheet = PlanSheet.fitting(panels, sides.size() == 2);
        this.units = units;
    }

    TuftGrid grid() {
        return grid;
    }

    /** The states of a survey with its separation line. */
    TuftMap states(String id, String title, TuftSurvey survey, @Nullable IntFunction<String> fields) {
        SeparationLine line = SeparationLine.of(survey);
        List<TuftMap.Cell> cells = new ArrayList<>();
        for (int i = 0; i < grid.size(); i++) {
            TuftState state = survey.states().get(i);
            cells.add(cell(i, kind(state), TuftWords.state(state), fields == null ? null : fields.apply(i)));
        }
        return map(id, title, TuftWords.description(survey, line, units), cells, lines(line));
    }

    private static String kind(TuftState state) {
        return state.seen() ? state.name().toLowerCase(Locale.ROOT) : "unseen";
    }

    /** How the second survey differs from the first. */
    TuftMap change(String id, String title, TuftDifference difference) {
        List<TuftMap.Cell> cells = new ArrayList<>();
        for (int i = 0; i < grid.size(); i++) {
            TuftDifference.Change change = difference.changes().get(i);
            cells.add(cell(i, kind(change), TuftWords.change(change), null));
        }
        return map(id, title, TuftWords.sentence(difference), cells, List.of());
    }

    private static String kind(TuftDifference.Change change) {
        return switch (change) {
            case SAME -> "same";
            case BECAME_STEADY -> "better";
            case NO_LONGER_STEADY -> "worse";
            case OTHERWISE -> "other";
            case UNKNOWN -> "unseen";
        };
    }

    private TuftMap map(String id, String title, String description, List<TuftMap.Cell> cells, List<String> lines) {
        List<Point2> corners = new ArrayList<>();
        List<String> outlines = new ArrayList<>();
        for (boolean left : sides) {
            for (WingPanel panel : panels) {
                List<Point2> outline = region(panel.innerStationMm(), panel.outerStationMm(), 0, 1, left);
                corners.addAll(outline);
                outlines.add(points(outline));
            }
        }
        double left = corners.stream().mapToDouble(Point2::x).min().orElse(0) - MARGIN;
        double right = corners.stream().mapToDouble(Point2::x).max().orElse(0) + MARGIN;
        double top = corners.stream().mapToDouble(p -> -p.y()).min().orElse(0) - LETTERING;
        double bottom = corners.stream().mapToDouble(p -> -p.y()).max().orElse(0) + MARGIN;
        return new TuftMap(
                id,
                title,
                description,
                Stream.of(left, top, right - left, bottom - top)
                        .map(TuftMaps::number)
                        .collect(Collectors.joining(" ")),
                sides.size() == 2,
                outlines,
                cells,
                lines,
                labels(top + LETTERING - 2.5));
    }

    private List<TuftMap.Label> labels(double y) {
        List<TuftMap.Label> labels = new ArrayList<>();
        for (boolean left : sides) {
            double last = Double.NEGATIVE_INFINITY;
            for (int s = 0; s < grid.stations(); s++) {
                double station = grid.tufts().get(s * grid.rows()).stationMm();
                double x = at(station, 0, left).x();
                if (Math.abs(x - last) >= LABEL_ROOM && Math.abs(x) >= LABEL_ROOM / 2) {
                    labels.add(new TuftMap.Label(number(x), number(y), units.span(station)));
                    last = x;
                }
            }
        }
        return labels;
    }

    private TuftMap.Cell cell(int index, String kind, String state, @Nullable String field) {
        Tuft tuft = grid.tufts().get(index);
        Tuft.Cell cell = tuft.cell();
        List<Point2> corners = region(cell.fromMm(), cell.toMm(), cell.fromChord(), cell.toChord(), tuft.left());
        Point2 at = at(tuft.stationMm(), tuft.chordFraction(), tuft.left());
        double width = (cell.toMm() - cell.fromMm()) * sheet.mmPerMm();
        double height = (cell.toChord() - cell.fromChord())
                * PlanSheet.panelAt(panels, tuft.stationMm()).chordMm(tuft.stationMm())
                * sheet.mmPerMm();
        double scale = Math.max(0.1, Math.min(0.7, 0.08 * Math.min(1.4 * width, height)));
        return new TuftMap.Cell(
                points(corners),
                kind,
                String.format(Locale.ROOT, "translate(%.2f %.2f) scale(%.3f)", at.x(), -at.y(), scale),
                field,
                TuftWords.place(tuft, units) + ": " + state);
    }

    /** Corners of a piece of one side, with those where panels meet. */
    private List<Point2> region(double fromMm, double toMm, double fromChord, double toChord, boolean left) {
        List<Double> stations = new ArrayList<>(List.of(fromMm));
        panels.stream()
                .map(WingPanel::outerStationMm)
                .filter(y -> y > fromMm && y < toMm)
                .forEach(stations::add);
        stations.add(toMm);
        List<Point2> corners = new ArrayList<>();
        stations.forEach(y -> corners.add(at(y, fromChord, left)));
        Collections.reverse(stations);
        stations.forEach(y -> corners.add(at(y, toChord, left)));
        return corners;
    }

    private Point2 at(double stationMm, double chordFraction, boolean left) {
        return sheet.at(PlanSheet.panelAt(panels, stationMm), stationMm, chordFraction, left);
    }

    /** Each run along the front edges of its cells, so that the tufts' marks stay free. */
    private List<String> lines(SeparationLine line) {
        List<String> lines = new ArrayList<>();
        for (List<SeparationLine.Point> run : line.runs()) {
            SeparationLine.Point first = run.get(0);
            SeparationLine.Point last = run.get(run.size() - 1);
            List<Point2> points = new ArrayList<>();
            points.add(at(cellOf(first).fromMm(), cellOf(first).fromChord(), first.left()));
            run.forEach(p -> points.add(at(p.stationMm(), cellOf(p).fromChord(), p.left())));
            points.add(at(cellOf(last).toMm(), cellOf(last).fromChord(), last.left()));
            lines.add(points(points));
        }
        return lines;
    }

    private Tuft.Cell cellOf(SeparationLine.Point point) {
        return grid.tufts().get(point.station() * grid.rows() + point.row()).cell();
    }

    private static String points(List<Point2> points) {
        return points.stream().map(p -> number(p.x()) + "," + number(-p.y())).collect(Collectors.joining(" "));
    }

    private static String number(double number) {
        return String.format(Locale.ROOT, "%.2f", number);
    }
}
