package org.vanewright.platform.page;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** The cautions in words, for files that carry them. Pages take the same texts from their fragment. */
@Component
public class Cautions {
    private static final List<String> KEYS = List.of(
            "caution.authority",
            "caution.engineer",
            "caution.scale",
            "caution.symmetry",
            "caution.clear",
            "caution.test",
            "caution.prediction");

    private final MessageSource messages;

    Cautions(MessageSource messages) {
        this.messages = messages;
    }

    /** Every caution, one sentence or two each. */
    public List<String> all() {
        return KEYS.stream().map(this::text).toList();
    }

    /** All cautions of a demonstration record, which say first that it is invented. */
    public List<String> all(boolean invented) {
        return invented
                ? Stream.concat(Stream.of(text("caution.invented")), all().stream())
                        .toList()
                : all();
    }

    private String text(String key) {
        return messages.getMessage(key, null, Locale.ENGLISH);
    }
}
