package org.vanewright.platform.editing;

import java.util.List;
import java.util.Map;
import org.vanewright.record.Draft;

/** What reviewers said about single fields of a draft, shown beside them in its editor. */
public interface FieldRemarks {
    /** Remarks by field path, such as {@code rows[0].pitchMm}. */
    Map<String, List<String>> of(Draft<?> draft);
}
