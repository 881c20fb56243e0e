package org.vanewright.engineering.placement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.wing.WingShape;

/**
 * Places the rows of a layout on a wing and its mirror image.
 *
 * <p>Units stand at {@code fromMm}, {@code fromMm + pitchMm}, … up to {@code toMm}. A unit whose bases would reach into
 * a keep-out, across a panel joint or off the surface gives way as its row says; each such case becomes a note. Bases
 * that overlap, within a row or between rows, are an error.
 */
public final class Placer {
    /** On both wings together; a page or template with more serves nobody. */
    static final int MAX_DEVICES = 3000;

    private Placer() {}

    /**
     * @throws InvalidInputException with fields {@code rows[i].…} when a row is out of bounds, bases overlap, or a row
     *     finds no place for any device
     */
    public static Placement place(WingShape wing, List<RowPlan> rows) {
        Checks checks = new Checks();
        for (RowPlan row : rows) {
            checks.addUnder("rows[" + row.index() + "]", RowRules.check(row, wing));
        }
        checks.throwIfAny();
        WingSkin skin = new WingSkin(wing);
        List<Station> pattern = new ArrayList<>();
        List<PlacementNote> notes = new ArrayList<>();
        for (RowPlan row : rows) {
            List<Station> found = placeRow(row, wing, skin, notes);
            checks.require(
                    !found.isEmpty(),
                    "rows[" + row.index() + "]",
                    row.name(),
                    "at least one free place; every device would sit in a keep-out, across a joint or off the skin");
            pattern.addAll(found);
        }
        long devices = countOnBothWings(byIndex(rows), pattern);
        checks.require(
                devices <= MAX_DEVICES,
                "rows",
                devices + " devices",
                "at most " + MAX_DEVICES + " devices on both wings together");
        checks.throwIfAny();
        List<Station> stations = new ArrayList<>();
        for (Wing side : Wing.values()) {
            stations.addAll(onWing(side, byIndex(rows), pattern));
        }
        OverlapCheck.check(rows, skin, stations);
        return new Placement(stations, notes);
    }

    private static List<Station> placeRow(RowPlan row, WingShape wing, WingSkin skin, List<PlacementNote> notes) {
        RowPlacer placer = new RowPlacer(row, wing, skin);
        List<Station> stations = new ArrayList<>();
        for (RowPlacer.Placed placed : placer.place()) {
            for (Unit.Member member : placer.unit().members()) {
                stations.add(station(row, skin, placed, member));
            }
        }
        notes.addAll(placer.notes());
        return stations;
    }

    private static Station station(RowPlan row, WingSkin skin, RowPlacer.Placed placed, Unit.Member member) {
        double stationMm = placed.centreMm() + member.offsetMm();
        WingSkin.Spot spot = skin.locate(row.side(), stationMm, row.position());
        if (spot == null) {
            throw new IllegalStateException("a placed device left the skin at span station " + stationMm);
        }
        return new Station(
                0,
                Wing.LEFT,
                row.index(),
                row.side(),
                spot.panel(),
                stationMm,
                spot.chordMm(),
                spot.xOverC(),
                spot.arcMm(),
                member.angleDeg(),
                Hand.of(member.angleDeg()),
                spot.radiusMm(),
                placed.moved());
    }

    private static long countOnBothWings(Map<Integer, RowPlan> rows, List<Station> pattern) {
        return Stream.of(Wing.values())
                .mapToLong(wing -> pattern.stream()
                        .filter(s -> row(rows, s).wings().on(wing))
                        .count())
                .sum();
    }

    /** The pattern as it appears on one wing, numbered from the root outward. */
    private static List<Station> onWing(Wing wing, Map<Integer, RowPlan> rows, List<Station> pattern) {
        List<Station> found = pattern.stream()
                .filter(s -> row(rows, s).wings().on(wing))
                .sorted(Comparator.comparingDouble(Station::stationMm).thenComparingInt(Station::row))
                .toList();
        List<Station> numbered = new ArrayList<>(found.size());
        for (Station s : found) {
            double sign = row(rows, s).angleSign(wing);
            double angle = s.angleDeg() == 0 ? 0 : sign * s.angleDeg();
            numbered.add(s.on(wing, numbered.size() + 1, angle));
        }
        return numbered;
    }

    static Map<Integer, RowPlan> byIndex(List<RowPlan> rows) {
        return rows.stream().collect(Collectors.toMap(RowPlan::index, Function.identity()));
    }

    static RowPlan row(Map<Integer, RowPlan> rows, Station station) {
        return Objects.requireNonNull(rows.get(station.row()));
    }
}
