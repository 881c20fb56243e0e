package org.vanewright.record.check;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Set;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;

/** The texts that people wrote in a document, by path. */
final class DocumentTexts {
    /** Names, days and paths in a fixed form. */
    private static final Set<String> NO_PROSE = Set.of("sha256", "slug", "on", "figures", "naca");

    private DocumentTexts() {}

    static void forEach(Record document, BiConsumer<String, String> reader) {
        read("", document, reader);
    }

    private static void read(String path, @Nullable Object value, BiConsumer<String, String> reader) {
        if (value instanceof String text) {
            reader.accept(path, text);
        } else if (value instanceof Record part) {
            for (RecordComponent component : part.getClass().getRecordComponents()) {
                if (!NO_PROSE.contains(component.getName())) {
                    read(
                            path.isEmpty() ? component.getName() : path + "." + component.getName(),
                            of(part, component),
                            reader);
                }
            }
        } else if (value instanceof List<?> list) {
            for (int i = 0; i < list.size(); i++) {
                read(path + "[" + i + "]", list.get(i), reader);
            }
        }
    }

    private static @Nullable Object of(Record part, RecordComponent component) {
        try {
            return component.getAccessor().invoke(part);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException("a document's components can be read: " + component, e);
        }
    }
}
