package org.vanewright.record;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Lists as they arrive in documents. */
public final class Lists {
    private Lists() {}

    /** Unmodifiable, empty when absent, without absent entries. */
    public static <T> List<T> present(@Nullable List<? extends @Nullable T> list) {
        return list == null
                ? List.of()
                : list.stream().filter(Objects::nonNull).map(e -> (T) e).toList();
    }
}
