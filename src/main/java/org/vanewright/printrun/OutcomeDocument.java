package org.vanewright.printrun;

import static org.vanewright.record.Lists.present;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What came of a run.
 *
 * @param pieces that were printed
 * @param minutes from start to end of all its plates, warming up included
 * @param materialG used, rafts and waste included
 * @param energyKWh taken from the mains
 * @param toleranceMm that a measured piece may be off its nominal height and thickness
 * @param defects pieces that were not fit for use, by kind
 */
public record OutcomeDocument(
        @Nullable Integer pieces,
        @Nullable Double minutes,
        @Nullable Double materialG,
        @Nullable Double energyKWh,
        @Nullable Double toleranceMm,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<DefectDocument> defects) {
    static final OutcomeDocument NONE = new OutcomeDocument(null, null, null, null, null, List.of());

    @SuppressWarnings("NullAway") // documents arrive with parts missing
    public OutcomeDocument {
        defects = present(defects);
    }

    /** How many pieces had any fault. */
    public int faulty() {
        return defects.stream()
                .map(DefectDocument::count)
                .filter(Objects::nonNull)
                .mapToInt(Integer::intValue)
                .sum();
    }
}
