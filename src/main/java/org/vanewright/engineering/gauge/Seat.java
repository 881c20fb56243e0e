package org.vanewright.engineering.gauge;

import java.util.List;
import org.vanewright.engineering.placement.Station;

/**
 * A unit on the wing: the devices that one setting of the gauge places.
 *
 * @param centreMm span station of its middle
 * @param members its devices from the root outward
 * @param gapToPreviousMm from the middle of the unit inboard of it; infinite for the first
 */
record Seat(double centreMm, List<Station> members, double gapToPreviousMm) {
    int panel() {
        return members.get(0).panel();
    }

    List<Integer> numbers() {
        return members.stream().map(Station::number).toList();
    }
}
