package org.vanewright.layout;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.ArrayList;
import java.util.Collections;
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
    @SuppressWarnings("NullAway") // documents arrive with parts missing; the rules name them
    public LayoutDocument {
        name = name == null ? "" : name;
        rows = rows == null ? List.of() : Collections.unmodifiableList(new ArrayList<>(rows));
    }

    /** As read from JSON, where {@code invented} may be left out and then is false. */
    @JsonCreator(mode = JsonCreator.Mode.PROPERTIES)
    @SuppressWarnings("NullAway") // the canonical constructor takes what is absent
    static LayoutDocument read(
            @JsonProperty("name") @Nullable String name,
            @JsonProperty("description") @Nullable String description,
            @JsonProperty("airframe") @Nullable RevisionRef airframe,
            @JsonProperty("rows") @Nullable List<RowDocument> rows,
            @JsonProperty("invented") @Nullable Boolean invented) {
        return new LayoutDocument(name, description, airframe, rows, Boolean.TRUE.equals(invented));
    }
}
