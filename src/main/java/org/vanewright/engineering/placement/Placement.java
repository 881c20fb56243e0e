package org.vanewright.engineering.placement;

import java.util.List;

/**
 * The outcome of placing every row of a layout.
 *
 * @param stations every device of both wings, in order of wing and number
 * @param notes every unit that was moved or left out
 */
public record Placement(List<Station> stations, List<PlacementNote> notes) {
    public Placement {
        stations = List.copyOf(stations);
        notes = List.copyOf(notes);
    }

    public List<Station> on(Wing wing) {
        return stations.stream().filter(s -> s.wing() == wing).toList();
    }

    public List<Station> on(Wing wing, int row) {
        return stations.stream().filter(s -> s.wing() == wing && s.row() == row).toList();
    }
}
