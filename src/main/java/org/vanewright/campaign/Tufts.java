package org.vanewright.campaign;

import java.util.Objects;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.airframe.SurfaceDrawings;
import org.vanewright.airframe.Surfaces;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.tuft.TuftGrid;
import org.vanewright.engineering.tuft.TuftSurvey;
import org.vanewright.engineering.tuft.Wings;

/** Tufts as the engineering core computes with them. */
public final class Tufts {
    private Tufts() {}

    /**
     * The tufts of a grid that has passed {@link TuftRules}.
     *
     * @throws InvalidInputException where it does not fit the aircraft
     */
    public static TuftGrid grid(AirframeDocument airframe, TuftGridDocument grid) {
        Wings wings = grid.wings();
        if (wings == null) {
            throw new InvalidInputException(new FieldProblem("wings", "missing", "RIGHT, LEFT or BOTH"));
        }
        return TuftGrid.of(
                Surfaces.toWing(SurfaceDrawings.named(airframe, Objects.requireNonNullElse(grid.surface(), ""))),
                grid.stationsMm(),
                grid.chordFractions(),
                wings);
    }

    /** What was seen of them. */
    public static TuftSurvey survey(TuftGrid grid, TuftSurveyDocument survey) {
        return TuftSurvey.of(grid, Objects.requireNonNullElse(survey.states(), ""));
    }
}
