package org.vanewright.record.demo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import org.springframework.stereotype.Component;
import org.vanewright.record.CanonicalJson;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordService;
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
    <T extends RecordContent> Map<String, T> read(String plural, Class<T> type) {
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

    /** Publishes a document unless it is there already, or somebody else has published over it. */
    <T extends RecordContent> void publish(String slug, T document, RecordService<T> records) {
        Optional<Revision<T>> published = records.latest(slug);
        if (published.isEmpty()) {
            records.createShipped(document, CONTRIBUTOR, null);
        } else if (published.get().contributor().equals(CONTRIBUTOR)
                && !published.get().sha256().equals(json.sha256(json.write(document)))) {
            records.reviseShipped(published.get().ref(), document, CONTRIBUTOR);
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
