package org.vanewright.layout;

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
        implements RecordContent {}
