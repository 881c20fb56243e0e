package org.vanewright.kit;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.platform.editing.Picture;

/**
 * A kit that was sent: what it holds and what becomes of it.
 *
 * @param id of the import
 * @param sha256 of the archive
 * @param sentAt when it came
 * @param keptAt when it was kept; absent until then
 * @param layout whose kit it is
 * @param items every revision, the layout's among them
 * @param photographs that come with it
 * @param pictures of the layout as it will look here; empty once it is kept
 */
public record KitPreview(
        String id,
        String sha256,
        Instant sentAt,
        @Nullable Instant keptAt,
        KitItem layout,
        List<KitItem> items,
        int photographs,
        List<Picture> pictures) {
    /** Revisions that are not here yet, or were not. */
    public long fresh() {
        return items.stream().filter(i -> !i.known()).count();
    }

    public boolean isKept() {
        return keptAt != null;
    }
}
