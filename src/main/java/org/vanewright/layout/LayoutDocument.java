package org.vanewright.layout;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RevisionRef;

/**
 * A layout as it is recorded.
 *
 * @param name what people call it
 * @param description what it is for, in the contributor's words
 * @param airframe exact revision of the airframe
 * @param rows at least one
 * @param invented true for demonstration data
 */
public record LayoutDocument(
        String name, @Nullable String description, RevisionRef airframe, List<RowDocument> rows, boolean invented)
        implements RecordContent {
    /** As read from JSON, where {@code invented} may be left out and then is false. */
    @JsonCreator(mode = JsonCreator.Mode.PROPERTIES)
    @SuppressWarnings("NullAway") // documents arrive with parts missing; the rules name them
    static LayoutDocument read(
            @JsonProperty("name") @Nullable String name,
            @JsonProperty("description") @Nullable String description,
            @JsonProperty("airframe") @Nullable RevisionRef airframe,
            @JsonProperty("rows") @Nullable List<@Nullable RowDocument> rows,
            @JsonProperty("invented") @Nullable Boolean invented) {
        return new LayoutDocument(name, description, airframe, rows, Boolean.TRUE.equals(invented));
    }
}
