package org.vanewright.catalogue.search;

import static org.assertj.core.api.Assertions.assertThat;

import com.zaxxer.hikari.HikariDataSource;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.JdbcTemplate;
import org.vanewright.testing.Databases;

class H2SearchTest extends SearchContract {
    H2SearchTest() {
        super(Databases.Engine.H2);
    }

    /** An array of H2 holds 65,536. */
    @Test
    void aWordMayBeInMoreEntriesThanAnArrayHolds() {
        int entries = 70_000;
        try (HikariDataSource own = Databases.migrated(Databases.Engine.H2)) {
            JdbcTemplate template = new JdbcTemplate(own);
            String numbers = "(select \"X\" as n from system_range(1, " + entries + ")) r";
            template.execute("insert into search_signature (id, sha256) values (1, 'x')");
            template.execute("insert into search_entry (id, kind, slug, revision, name, summary, invented, contributor,"
                    + " published_at, effect_ppm, prominence, signature_id, version, change_number) select n, 'layout',"
                    + " 'row-' || n, 1, 'Row', '', true, 'Club', timestamp with time zone '2026-03-01 09:00:00+00', -1, 100,"
                    + " 1, 1, n from " + numbers);
            template.execute("insert into search_word (word, entry_id, weight) select 'row', n, 1 from " + numbers);
            WordIndexRepository.Fitting found = new H2WordIndexRepository(template)
                    .fitting(List.of(new WordIndexRepository.Wanted(Term.of("row"), null)))
                    .get(0);
            assertThat(found.fits()).hasSize(entries);
            WordIndexRepository.Fitting since = new H2WordIndexRepository(template)
                    .fitting(List.of(
                            new WordIndexRepository.Wanted(Term.of("other"), null),
                            new WordIndexRepository.Wanted(Term.of("ro"), entries - 3L)))
                    .get(1);
            Arrays.sort(since.fits());
            assertThat(since.fits()).containsExactly(entries - 2, entries - 1, entries);
            assertThat(since.looked()).hasSize(3);
        }
    }
}
