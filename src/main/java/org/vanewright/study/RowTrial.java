package org.vanewright.study;

import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.engineering.solid.VaneSide;

/**
 * A row of vanes as a study looks at it: one of a layout, or one that is only tried.
 *
 * @param index in its layout; 0 where there is none
 * @param name of the row
 * @param surface that carries it
 * @param side of the surface
 * @param stationMm span station at which it is looked at
 * @param chordFraction x/c of the base centre there
 * @param vane what stands there
 * @param angleDeg to the chordwise direction, as a size
 * @param pitchMm from one device, or middle of a pair, to the next
 * @param gapMm between the trailing edges of a pair; null for single vanes
 * @param vanes of both wings
 */
public record RowTrial(
        int index,
        String name,
        String surface,
        SurfaceSide side,
        double stationMm,
        double chordFraction,
        VaneSide vane,
        double angleDeg,
        double pitchMm,
        @Nullable Double gapMm,
        int vanes) {
    public boolean pairs() {
        return gapMm != null;
    }

    public Place place() {
        return new Place(index, name, stationMm, side, chordFraction, vane.heightMm());
    }

    RowTrial withVanes(int count) {
        return new RowTrial(
                index, name, surface, side, stationMm, chordFraction, vane, angleDeg, pitchMm, gapMm, count);
    }

    /** With what is tried in place of what it has. */
    RowTrial tried(StudyQuery.Trial trial) {
        double height = or(trial.heightMm(), vane.heightMm());
        double length = or(trial.lengthMm(), vane.lengthMm());
        return new RowTrial(
                index,
                name,
                surface,
                side,
                stationMm,
                or(trial.chordFraction(), chordFraction),
                vane.scaled(height, length),
                or(trial.angleDeg(), angleDeg),
                or(trial.pitchMm(), pitchMm),
                gapMm,
                vanes);
    }

    private static double or(@Nullable Double given, double otherwise) {
        return given == null ? otherwise : given;
    }
}
