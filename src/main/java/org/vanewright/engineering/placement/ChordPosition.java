package org.vanewright.engineering.placement;

/** Where along the chord the base centres of a row lie. */
public sealed interface ChordPosition {
    /** At the same fraction of the local chord everywhere. */
    record FractionOfChord(double xOverC) implements ChordPosition {}

    /** At the same distance along the skin from the leading edge everywhere. */
    record DistanceAlongSkin(double distanceMm) implements ChordPosition {}
}
