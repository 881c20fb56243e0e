package org.vanewright.engineering.gauge;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.vanewright.engineering.placement.Arrangement;
import org.vanewright.engineering.placement.RowPlan;
import org.vanewright.engineering.placement.Unit;
import org.vanewright.engineering.placement.WingSkin;
import org.vanewright.engineering.unroll.FlatSkin;
import org.vanewright.engineering.wing.WingPanel;
import org.vanewright.engineering.wing.WingShape;

/** The measures that all gauges of a row share, and what they say of a station. */
final class GaugeFrame {
    /** Farthest rear end of a hook that is still handy and stiff. Common practice, no source. */
    static final double LONGEST_MM = 250;

    static final double LEAST_WALL_MM = 2.4;
    private static final double OUTBOARD_WALL_MM = 8;
    /** The shell ends this far behind the base. */
    private static final double BEHIND_BASE_MM = 2;

    private static final double WIDEST_MM = 300;
    private static final int HOLLOW_SAMPLES = 40;
    private static final double SHARPEST_RAD = Math.toRadians(5);

    private final WingShape wing;
    private final WingSkin skin;
    private final RowPlan row;
    private final GaugeSettings settings;
    private final Unit unit;

    GaugeFrame(WingShape wing, RowPlan row, GaugeSettings settings) {
        this.wing = wing;
        this.skin = new WingSkin(wing);
        this.row = row;
        this.settings = settings;
        this.unit = Unit.of(row);
    }

    RowPlan row() {
        return row;
    }

    GaugeSettings settings() {
        return settings;
    }

    /** From the middle of the unit to the outermost edge of the unit inboard of it. */
    double inboardMm() {
        return row.pitchMm() - unit.halfSpanMm();
    }

    double outboardMm() {
        return Math.max(
                unit.halfSpanMm() + settings.clearanceMm() + OUTBOARD_WALL_MM, settings.widthMm() - inboardMm());
    }

    /** Along the skin from a base's centre to the rear end of the shell. */
    double behindMm() {
        return unit.halfChordMm() + BEHIND_BASE_MM;
    }

    double halfChordMm() {
        return unit.halfChordMm();
    }

    NoseCurve curve(int panel, double stationMm) {
        return NoseCurve.at(wing, skin, panel, row.side(), stationMm);
    }

    /** Distance along the skin that the row asks for. */
    double arcMm(int panel, double stationMm) {
        FlatSkin flat = skin.flat(row.side(), panel);
        double span = wing.panels().get(panel).spanFraction(stationMm);
        return row.position().arcMm(flat, Math.min(1, Math.max(0, span)));
    }

    /** Slots of a gauge cut for that station, angles as the seat's own. */
    List<Slot> slots(Seat like, double stationMm) {
        return like.members().stream()
                .map(m -> {
                    double offset = m.stationMm() - like.centreMm();
                    return new Slot(offset, arcMm(like.panel(), stationMm + offset), m.angleDeg());
                })
                .toList();
    }

    double rearMm(List<Slot> slots) {
        return slots.stream().mapToDouble(Slot::arcMm).max().orElseThrow() + behindMm();
    }

    /** What no station can mend; empty where a gauge can be thought of. */
    List<String> obstacles() {
        List<String> found = new ArrayList<>();
        double wall = inboardMm() - unit.halfSpanMm() - settings.clearanceMm();
        if (wall < LEAST_WALL_MM) {
            found.add(sentence(
                    "its units stand so close that no wall of %.1f mm is left between slot and neighbour (%.1f mm)",
                    LEAST_WALL_MM, Math.max(0, wall)));
        }
        if (inboardMm() + outboardMm() > WIDEST_MM) {
            found.add(sentence("its pitch of %.0f mm makes the shell wider than %.0f mm", row.pitchMm(), WIDEST_MM));
        }
        double between = betweenSlotsMm();
        if (between < LEAST_WALL_MM) {
            found.add(sentence(
                    "the bases of its pairs stand %.1f mm apart, which leaves no wall of %.1f mm between their slots",
                    Math.max(0, between), LEAST_WALL_MM));
        }
        return found;
    }

    private double betweenSlotsMm() {
        boolean two =
                row.arrangement() != Arrangement.CO_ROTATING && unit.members().size() == 2;
        if (!two) {
            return Double.POSITIVE_INFINITY;
        }
        double widthMm = 2 * (unit.halfSpanMm() - row.pairGapMm() / 2);
        return row.pairGapMm() - widthMm - 2 * settings.clearanceMm();
    }

    /** Why no gauge can sit at a seat, as a sentence that names the row; empty where one can. */
    List<String> obstacles(Seat seat) {
        List<String> found = new ArrayList<>();
        WingPanel panel = wing.panels().get(seat.panel());
        if (seat.centreMm() - inboardMm() < panel.innerStationMm()
                || seat.centreMm() + outboardMm() > panel.outerStationMm()) {
            found.add(sentence("the gauge would reach over a joint or the end of the surface"));
            return found;
        }
        if (seat.gapToPreviousMm() < row.pitchMm() - 0.01) {
            found.add(
                    sentence("it stands nearer than one pitch to the device inboard of it, where the gauge would lie"));
        }
        NoseCurve curve = curve(seat.panel(), seat.centreMm());
        double rear = rearMm(slots(seat, seat.centreMm()));
        if (rear > LONGEST_MM) {
            found.add(sentence(
                    "it lies so far aft that the hook would be longer than %.0f mm, the most that stays stiff",
                    LONGEST_MM));
        } else if (rear > curve.lengthMm() - 1) {
            found.add(sentence("the shell would reach past the trailing edge"));
        }
        if (settings.wrapMm() > curve.otherLengthMm() / 2) {
            found.add(sentence("the hook of %.0f mm is more than half of the other side", settings.wrapMm()));
        }
        if (curve.cornerRad() > SHARPEST_RAD) {
            found.add(sentence("the nose has a corner, over which no shell of even thickness can be laid"));
        }
        if (tightestHollow(curve, rear)) {
            found.add(sentence("the skin is so hollow that the shell would fold into itself"));
        }
        return found;
    }

    private boolean tightestHollow(NoseCurve curve, double rearMm) {
        double off = settings.clearanceMm() + settings.thicknessMm() + GaugeSolid.RAISED_MM;
        for (int i = 0; i <= HOLLOW_SAMPLES; i++) {
            double s = -settings.wrapMm() + i * (rearMm + settings.wrapMm()) / HOLLOW_SAMPLES;
            if (1 + curve.at(s).curvaturePerMm() * off < 0.5) {
                return true;
            }
        }
        return false;
    }

    String sentence(String reason, Object... figures) {
        return String.format(
                Locale.ROOT,
                "Row %d, %s: %s. Use the template there.",
                row.index() + 1,
                row.name(),
                String.format(Locale.ROOT, reason, figures));
    }
}
