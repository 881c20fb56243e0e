package org.vanewright.record.demo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import org.springframework.stereotype.Component;
import org.vanewright.record.CanonicalJson;
import org.vanewright.record.RecordContent;
import org.vanewright.record.Revision;

/** Reads {@code db/demo/<plural>/<slug>.json} and publishes it where needed. */
@Component
public class DemoDocuments {
    /** Contributor of demonstration data. */
    public static final String CONTRIBUTOR = "Vanewright demonstration";

    private final CanonicalJson json;

    DemoDocuments(CanonicalJson json) {
        this.json = json;
    }

    /** Documents by slug, in order of slug. */
    public <T extends RecordContent> Map<String, T> read(String plural, Class<T> type) {
        try {
            Resource[] files =
                    new PathMatchingResourcePatternResolver().getResources("classpath:db/demo/" + plural + "/*.json");
            Map<String, T> documents = new LinkedHashMap<>();
            Stream.of(files)
                    .sorted(Comparator.comparing(DemoDocuments::slug))
                    .forEach(file -> documents.put(slug(file), json.read(text(file), type)));
            return documents;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Publishes a document unless it is there already, or somebody else has published over it.
     *
     * @param latest the published revision of a slug
     * @param create publishes the first revision
     * @param revise publishes the next one
     */
    public <T extends RecordContent> void publish(
            String slug,
            T document,
            Function<String, Optional<Revision<T>>> latest,
            Consumer<T> create,
            BiConsumer<Revision<T>, T> revise) {
        Optional<Revision<T>> published = latest.apply(slug);
        if (published.isEmpty()) {
            create.accept(document);
        } else if (published.get().contributor().equals(CONTRIBUTOR)
                && !published.get().sha256().equals(json.sha256(json.write(document)))) {
            revise.accept(published.get(), document);
        }
    }

    private static String slug(Resource file) {
        String name = String.valueOf(file.getFilename());
        return name.substring(0, name.length() - ".json".length());
    }

    private static String text(Resource file) {
        try {
            return file.getContentAsString(StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
