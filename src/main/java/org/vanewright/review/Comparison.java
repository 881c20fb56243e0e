package org.vanewright.review;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.platform.editing.Picture;
import org.vanewright.record.Revision;

/**
 * A revision beside the one it is compared with.
 *
 * @param before null where there is nothing to compare with
 * @param after the revision
 * @param fields of either
 * @param picturesBefore drawings of the first
 * @param picturesAfter drawings of the second
 */
public record Comparison(
        @Nullable Revision<?> before,
        Revision<?> after,
        List<FieldChange> fields,
        List<Picture> picturesBefore,
        List<Picture> picturesAfter) {
    public List<FieldChange> changed() {
        return fields.stream().filter(FieldChange::changed).toList();
    }

    public List<FieldChange> unchanged() {
        return fields.stream().filter(f -> !f.changed()).toList();
    }
}
