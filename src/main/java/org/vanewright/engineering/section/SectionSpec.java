package org.vanewright.engineering.section;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How a section is written in records and calculations: a NACA number or coordinates, exactly one of them.
 *
 * @param naca four or five digits such as {@code "2412"} or {@code "23012"}
 * @param trailingEdge for NACA sections; absent means {@link TrailingEdge#BLUNT}, the edge as published
 * @param coordinates one loop, trailing edge → upper → leading edge → lower → trailing edge, in chords, each entry
 *     {@code [x, y]}; taken as given, neither turned nor rescaled
 * @param title of uploaded coordinates
 */
public record SectionSpec(
        @Nullable String naca,
        @Nullable TrailingEdge trailingEdge,
        @Nullable List<List<Double>> coordinates,
        @Nullable String title) {
    /** Blunt as the published thickness form leaves it, or closed by its last coefficient. */
    public enum TrailingEdge {
        BLUNT,
        CLOSED
    }

    public static SectionSpec naca(String digits) {
        return new SectionSpec(digits, null, null, null);
    }
}
