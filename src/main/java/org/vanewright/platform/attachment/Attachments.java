package org.vanewright.platform.attachment;

import org.jspecify.annotations.Nullable;

/**
 * Keeps the bytes of attachments in their rows, or in object storage where that is configured. A row that holds its bytes is
 * read from there whatever is configured now, so that storage may be added to a service that runs.
 */
public final class Attachments {
    /** In their rows. */
    public static final Attachments IN_ROWS = new Attachments(null);

    private final @Nullable ObjectStorage outside;

    Attachments(@Nullable ObjectStorage outside) {
        this.outside = outside;
    }

    /** Where they lie if not in their rows. */
    @Nullable
    ObjectStorage outside() {
        return outside;
    }

    /**
     * Keeps bytes before their row is written; what is left where the row is not is swept away later.
     *
     * @param key a folder, what owns them, and which of its attachments, such as {@code photographs/5f…/large.jpg}
     * @return what stands in the row: the bytes, or nothing where they lie outside
     * @throws AttachmentsAwayException where they could not be kept
     */
    public byte @Nullable [] keep(String key, byte[] bytes) {
        if (outside == null) {
            return bytes;
        }
        outside.put(key, bytes);
        return null;
    }

    /**
     * The bytes of a row that there is.
     *
     * @param column what stands in it
     * @throws AttachmentsAwayException where they cannot be had now
     * @throws IllegalStateException where they are gone, or there is no storage any more
     */
    public byte[] read(byte @Nullable [] column, String key) {
        if (column != null) {
            return column;
        }
        if (outside == null) {
            throw new IllegalStateException(
                    key + " lies in object storage, but vanewright.attachments.bucket is not set");
        }
        return outside.get(key).orElseThrow(() -> new IllegalStateException(key + " is not in the object storage"));
    }
}
