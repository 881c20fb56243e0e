package org.vanewright.platform.attachment;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Keeps bytes by key. Everything throws {@link AttachmentsAwayException} where it does not answer. */
interface ObjectStorage {
    /** Keeps it, or replaces what is there. */
    void put(String key, byte[] bytes);

    /** Nothing where there is none. */
    Optional<byte[]> get(String key);

    /** An object as a list shows it. */
    record Listed(String key, Instant changedAt) {}

    /** All keys that begin so, some at a time. */
    void list(String prefix, Consumer<List<Listed>> some);

    void remove(Collection<String> keys);
}
