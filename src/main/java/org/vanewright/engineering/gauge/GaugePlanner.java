package org.vanewright.engineering.gauge;

import java.util.ArrayList;
import java.util.List;
import org.vanewright.engineering.gauge.RowGauges.LeftOut;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.placement.Placement;
import org.vanewright.engineering.placement.Station;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.engineering.template.Register;
import org.vanewright.engineering.template.TemplateRow;
import org.vanewright.engineering.wing.WingShape;

/**
 * Finds the fewest gauges for a row. From the root outward each gauge takes as many units as fit, cut for the middle of its
 * range; since a fit only worsens with the distance from that middle on a straight panel, no other division needs fewer.
 *
 * <p>Fits where, over its whole width, the shell neither stands off more than the stated gap beyond its clearance nor uses
 * up more than the clearance, and no slot is off its distance along the skin by more than the stated amount.
 */
public final class GaugePlanner {
    /** More than these help nobody. */
    static final int MOST = 60;

    private final GaugeFrame frame;
    private final TemplateRow template;
    private final Wing wing;
    private final List<Gauge> gauges = new ArrayList<>();
    private final List<LeftOut> leftOut = new ArrayList<>();

    private GaugePlanner(WingShape shape, TemplateRow template, Wing wing, GaugeSettings settings) {
        this.frame = new GaugeFrame(shape, template.plan(), settings);
        this.template = template;
        this.wing = wing;
    }

    /**
     * @return with no gauges, and the reason, where the row is not for a hooked gauge
     * @throws InvalidInputException with fields of {@link GaugeSettings}
     */
    public static RowGauges plan(
            WingShape shape, Placement placement, TemplateRow row, Wing wing, GaugeSettings settings) {
        List<FieldProblem> problems = settings.problems();
        Checks checks = new Checks();
        problems.forEach(checks::add);
        checks.throwIfAny();
        GaugePlanner planner = new GaugePlanner(shape, row, wing, settings);
        planner.divide(placement.on(wing, row.plan().index()));
        return planner.result();
    }

    private RowGauges result() {
        List<Gauge> numbered = new ArrayList<>();
        for (Gauge g : gauges) {
            numbered.add(new Gauge(
                    numbered.size() + 1,
                    gauges.size(),
                    g.panel(),
                    g.cutForMm(),
                    g.fromMm(),
                    g.toMm(),
                    g.devices(),
                    g.byMeasure(),
                    g.fit(),
                    g.slots(),
                    g.inboardMm(),
                    g.outboardMm(),
                    g.rearMm()));
        }
        return new RowGauges(
                template.plan().index(),
                template.plan().name(),
                wing,
                template.plan().side(),
                frame.settings(),
                numbered,
                leftOut);
    }

    private void divide(List<Station> stations) {
        List<Seat> seats = seats(stations);
        List<String> never = frame.obstacles();
        if (!never.isEmpty()) {
            leaveOut(seats, never.get(0));
            return;
        }
        List<Seat> served = new ArrayList<>();
        for (Seat seat : seats) {
            List<String> why = obstacles(seat);
            if (why.isEmpty()) {
                served.add(seat);
            } else {
                leaveOut(List.of(seat), why.get(0));
            }
        }
        for (int i = 0; i < served.size(); ) {
            if (gauges.size() == MOST) {
                leaveOut(
                        served.subList(i, served.size()),
                        frame.sentence("it would need more than %d gauges; allow a larger gap or place", MOST));
                return;
            }
            int last = farthest(served, i);
            gauges.add(gauge(served.subList(i, last + 1)));
            i = last + 1;
        }
    }

    private List<Seat> seats(List<Station> stations) {
        int each =
                frame.row().arrangement().paired() && !frame.row().footprint().pairOnOneBase() ? 2 : 1;
        List<Seat> seats = new ArrayList<>();
        double before = Double.NEGATIVE_INFINITY;
        for (int i = 0; i + each <= stations.size(); i += each) {
            List<Station> members = List.copyOf(stations.subList(i, i + each));
            double centre =
                    members.stream().mapToDouble(Station::stationMm).average().orElseThrow();
            seats.add(new Seat(centre, members, centre - before));
            before = centre;
        }
        return seats;
    }

    private List<String> obstacles(Seat seat) {
        Station first = seat.members().get(0);
        if (template.register() == Register.SPAR_LINE && first.xOverC() >= template.registerXOverC()) {
            return List.of(frame.sentence("it lies behind its spar line, where nothing hooks over the nose"));
        }
        return frame.obstacles(seat);
    }

    /** Last seat that one gauge can serve together with seat {@code from}. */
    private int farthest(List<Seat> seats, int from) {
        int end = from;
        while (end + 1 < seats.size()
                && seats.get(end + 1).panel() == seats.get(from).panel()) {
            end++;
        }
        if (fit(seats, from, end).within(frame.settings())) {
            return end;
        }
        int good = from;
        int bad = end;
        while (bad - good > 1) {
            int middle = (good + bad) / 2;
            if (fit(seats, from, middle).within(frame.settings())) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        return good;
    }

    private Fit fit(List<Seat> seats, int from, int to) {
        double cutFor = middle(seats.get(from), seats.get(to));
        int panel = seats.get(from).panel();
        List<Slot> slots = frame.slots(seats.get(from), cutFor);
        return FitProbe.of(frame, panel, cutFor, slots, seats.get(from).centreMm())
                .worse(FitProbe.of(frame, panel, cutFor, slots, seats.get(to).centreMm()));
    }

    private static double middle(Seat from, Seat to) {
        return 0.5 * (from.centreMm() + to.centreMm());
    }

    private Gauge gauge(List<Seat> seats) {
        Seat first = seats.get(0);
        Seat last = seats.get(seats.size() - 1);
        double cutFor = middle(first, last);
        List<Slot> slots = frame.slots(first, cutFor);
        double pitch = frame.row().pitchMm();
        return new Gauge(
                0,
                0,
                first.panel(),
                cutFor,
                first.centreMm(),
                last.centreMm(),
                seats.stream().flatMap(s -> s.numbers().stream()).toList(),
                seats.stream()
                        .filter(s -> s.gapToPreviousMm() > pitch + 0.01)
                        .flatMap(s -> s.numbers().stream())
                        .toList(),
                fit(seats, 0, seats.size() - 1),
                slots,
                frame.inboardMm(),
                frame.outboardMm(),
                frame.rearMm(slots));
    }

    /** Neighbours with one reason share a line. */
    private void leaveOut(List<Seat> seats, String reason) {
        List<Integer> devices = new ArrayList<>();
        LeftOut latest = leftOut.isEmpty() ? null : leftOut.get(leftOut.size() - 1);
        if (latest != null && latest.reason().equals(reason)) {
            leftOut.remove(leftOut.size() - 1);
            devices.addAll(latest.devices());
        }
        seats.forEach(s -> devices.addAll(s.numbers()));
        leftOut.add(new LeftOut(devices, reason));
    }
}
