package org.vanewright.platform.form;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

/**
 * One choice of a select or a group of radio buttons.
 *
 * @param value what the form sends
 * @param label what a person reads
 */
public record Option(String value, String label) {
    public static <E extends Enum<E>> List<Option> of(E[] constants, Function<E, String> label) {
        return Arrays.stream(constants)
                .map(c -> new Option(c.name(), label.apply(c)))
                .toList();
    }
}
