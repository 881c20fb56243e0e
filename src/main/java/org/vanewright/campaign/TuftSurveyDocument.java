package org.vanewright.campaign;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.record.Lists;

/**
 * What a grid's tufts did at one condition.
 *
 * @param id made where it was recorded, so that one sent twice counts once
 * @param configuration key of the configuration flown
 * @param indicatedAirspeedKt as it was read
 * @param flaps where not as in the plan
 * @param power where not as in the plan
 * @param at when, as {@code 2026-05-02T09:14:00Z}
 * @param states {@code S} steady, {@code U} unsteady, {@code R} reversed, {@code -} not seen, one letter for each tuft:
 *     the right side, then the left; within a side by stations outboard; within a station from front to rear
 * @param photographs of it, by the SHA-256 of photographs of the campaign
 * @param remark anything else
 * @param frames what the service proposed from still frames, if there were any; what counts are the states
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record TuftSurveyDocument(
        @Nullable String id,
        @Nullable String configuration,
        @Nullable Double indicatedAirspeedKt,
        @Nullable String flaps,
        @Nullable String power,
        @Nullable String at,
        @Nullable String states,
        List<String> photographs,
        @Nullable String remark,
        @Nullable TuftFramesDocument frames) {
    @SuppressWarnings("NullAway") // documents arrive with parts missing; the rules name them
    public TuftSurveyDocument {
        photographs = Lists.present(photographs);
    }

    /** The same with other photographs. */
    public TuftSurveyDocument withPhotographs(List<String> other) {
        return new TuftSurveyDocument(
                id, configuration, indicatedAirspeedKt, flaps, power, at, states, other, remark, frames);
    }

    /** The same with other states. */
    public TuftSurveyDocument withStates(String other) {
        return new TuftSurveyDocument(
                id, configuration, indicatedAirspeedKt, flaps, power, at, other, photographs, remark, frames);
    }

    /** The same with what was made of still frames. */
    public TuftSurveyDocument withFrames(@Nullable TuftFramesDocument other) {
        return new TuftSurveyDocument(
                id, configuration, indicatedAirspeedKt, flaps, power, at, states, photographs, remark, other);
    }

    /** Whether there is a proposal that nobody has gone through, so that no tuft counts as seen. */
    public boolean unconfirmed() {
        return frames != null && states != null && states.matches("-*");
    }
}
