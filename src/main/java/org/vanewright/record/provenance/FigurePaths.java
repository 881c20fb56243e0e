package org.vanewright.record.provenance;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Paths of figures, such as {@code surfaces[0].panels[1].innerChordMm}. */
final class FigurePaths {
    private static final String STEP = "([A-Za-z][A-Za-z0-9]{0,40})((?:\\[\\d{1,4}])?)";
    private static final Pattern PATH = Pattern.compile(STEP + "(?:\\." + STEP + "){0,6}");
    private static final Pattern STEPS = Pattern.compile(STEP);

    /** What a document says beside its figures. */
    private static final Set<String> NO_FIGURES =
            Set.of("name", "description", "invented", "provenance", "photographs", "operatingBasis");

    private FigurePaths() {}

    /** Whether a path is another one or lies beneath it. */
    static boolean isWithin(String path, String outer) {
        return path.equals(outer)
                || path.startsWith(outer) && (path.charAt(outer.length()) == '.' || path.charAt(outer.length()) == '[');
    }

    /** Whether the document has something at that path that can be called a figure. */
    static boolean exists(Record document, String path) {
        if (!PATH.matcher(path).matches()) {
            return false;
        }
        Object at = document;
        Matcher steps = STEPS.matcher(path);
        while (at != null && steps.find()) {
            if (at == document && NO_FIGURES.contains(steps.group(1))) {
                return false;
            }
            at = entry(component(at, steps.group(1)), steps.group(2));
        }
        return at != null;
    }

    private static @Nullable Object component(Object owner, String name) {
        RecordComponent[] components = owner.getClass().getRecordComponents();
        Optional<RecordComponent> found = components == null
                ? Optional.empty()
                : Arrays.stream(components)
                        .filter(c -> c.getName().equals(name))
                        .findFirst();
        return found.map(c -> read(owner, c)).orElse(null);
    }

    private static @Nullable Object read(Object owner, RecordComponent component) {
        try {
            return component.getAccessor().invoke(owner);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException("a document's components can be read: " + component, e);
        }
    }

    private static @Nullable Object entry(@Nullable Object value, String index) {
        if (index.isEmpty() || value == null) {
            return value;
        }
        int i = Integer.parseInt(index.substring(1, index.length() - 1));
        return value instanceof List<?> list && i < list.size() ? list.get(i) : null;
    }
}
