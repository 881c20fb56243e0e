package org.vanewright.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.vanewright.testing.Databases;

/** The same on both databases. */
class SummaryRepositoryTest {
    @ParameterizedTest
    @EnumSource(Databases.Engine.class)
    void ofManyRevisionsThoseAreFoundThatRulesOfThisVersionMade(Databases.Engine engine) {
        try (var database = Databases.migrated(engine)) {
            SummaryRepository summaries = new SummaryRepository(JdbcClient.create(database));
            RevisionRef first = new RevisionRef("kite", 1);
            RevisionRef second = new RevisionRef("kite", 2);
            RevisionRef older = new RevisionRef("dragon", 1);
            summaries.put("layout", 2, first, "{\"devices\":1}");
            summaries.put("layout", 2, second, "{\"devices\":2}");
            summaries.put("campaign", 2, first, "{\"points\":7}");
            summaries.put("layout", 1, older, "{}");
            List<RevisionRef> asked = List.of(first, older, new RevisionRef("nobody", 1), second, first);
            assertThat(summaries.find("layout", 2, asked))
                    .isEqualTo(Map.of(first, "{\"devices\":1}", second, "{\"devices\":2}"));
            assertThat(summaries.find("campaign", 2, asked)).containsOnlyKeys(first);
            assertThat(summaries.find("layout", 2, List.of())).isEmpty();

            summaries.put("layout", 2, older, "{\"devices\":3}");
            assertThat(summaries.find("layout", 2, asked)).containsEntry(older, "{\"devices\":3}");
            assertThat(summaries.find("layout", 1, asked)).isEmpty();
            assertThat(summaries.find(
                            "layout",
                            2,
                            IntStream.range(0, 500)
                                    .mapToObj(i -> new RevisionRef("kite", 1 + i))
                                    .toList()))
                    .containsOnlyKeys(first, second);
        }
    }
}
