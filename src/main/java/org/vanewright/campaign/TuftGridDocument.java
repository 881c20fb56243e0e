package org.vanewright.campaign;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.engineering.tuft.Wings;
import org.vanewright.record.Lists;

/**
 * Tufts on a surface, and what was seen of them.
 *
 * @param id made where it was recorded
 * @param surface name of a surface of the airframe
 * @param side of the surface
 * @param wings sides of the aircraft that carry tufts; {@code RIGHT} on a fin
 * @param stationsMm span stations, from the root outboard
 * @param chordFractions of the local chord, from front to rear
 * @param surveys one for each condition that was looked at
 */
public record TuftGridDocument(
        @Nullable String id,
        @Nullable String surface,
        @Nullable SurfaceSide side,
        @Nullable Wings wings,
        List<Double> stationsMm,
        List<Double> chordFractions,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<TuftSurveyDocument> surveys) {
    @SuppressWarnings("NullAway") // documents arrive with parts missing; the rules name them
    public TuftGridDocument {
        stationsMm = Lists.present(stationsMm);
        chordFractions = Lists.present(chordFractions);
        surveys = Lists.present(surveys);
    }

    /** The same tufts with other surveys. */
    public TuftGridDocument withSurveys(List<TuftSurveyDocument> other) {
        return new TuftGridDocument(id, surface, side, wings, stationsMm, chordFractions, other);
    }

    /** Number of tufts; 0 where it does not say which sides carry them. */
    public int size() {
        return wings == null ? 0 : wings.sides().size() * stationsMm.size() * chordFractions.size();
    }
}
