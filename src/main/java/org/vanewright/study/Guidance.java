package org.vanewright.study;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import org.springframework.core.io.ClassPathResource;
import org.springframework.stereotype.Component;
import org.vanewright.engineering.vane.Recommendation;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** What others recommend, as it stands in {@code guidance/recommendations.json}. */
@Component
public class Guidance {
    private static final String FILE = "guidance/recommendations.json";

    private final List<Recommendation> recommendations;

    Guidance(JsonMapper mapper) {
        try (InputStream in = new ClassPathResource(FILE).getInputStream()) {
            recommendations = List.copyOf(mapper.readValue(in, new TypeReference<List<Recommendation>>() {}));
        } catch (IOException e) {
            throw new UncheckedIOException(FILE, e);
        }
    }

    public List<Recommendation> all() {
        return recommendations;
    }
}
