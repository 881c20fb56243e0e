package org.vanewright.audit;

import static org.assertj.core.api.Assertions.assertThat;

import com.zaxxer.hikari.HikariDataSource;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.vanewright.testing.Databases;
import org.vanewright.testing.Databases.Engine;
import org.vanewright.testing.SteppingClock;

class AuditLogTest {
    private static final int MANY = 1005;

    @ParameterizedTest
    @EnumSource
    void entriesAreFoundByEventAndByEveryWord(Engine engine) {
        try (HikariDataSource source = Databases.migrated(engine)) {
            AuditLog log = log(source);
            log.add("1", "Kim", "draft.submitted", "layouts/Heron revision 2", "");
            log.add("1", "Kim", "draft.saved", "layouts/heron_100%", "");
            log.add(null, "Visitor", "draft.saved", "layouts/kite", "Kim and heron stand in the detail only");
            assertThat(subjects(log, AuditFilter.typed("draft.saved", "")))
                    .containsExactly("layouts/kite", "layouts/heron_100%");
            assertThat(subjects(log, AuditFilter.typed(null, " KIM  heron ")))
                    .containsExactly("layouts/heron_100%", "layouts/Heron revision 2");
            assertThat(subjects(log, AuditFilter.typed("", "100%"))).containsExactly("layouts/heron_100%");
            assertThat(subjects(log, AuditFilter.typed("", "n_1"))).containsExactly("layouts/heron_100%");
            assertThat(subjects(log, AuditFilter.typed("", "!"))).isEmpty();
            assertThat(subjects(log, AuditFilter.typed("draft.saved' or '1'='1", "")))
                    .isEmpty();
            assertThat(subjects(log, AuditFilter.typed("\u0000", "\u0000"))).hasSize(3);
            assertThat(log.events()).containsExactly("draft.saved", "draft.submitted");
        }
    }

    @ParameterizedTest
    @EnumSource
    void aLongLogIsReadWholeAndAddingMeanwhileDoesNotProlongIt(Engine engine) {
        try (HikariDataSource source = Databases.migrated(engine)) {
            AuditLog log = log(source);
            for (int i = 0; i < MANY; i++) {
                log.add(null, "Visitor", i % 2 == 0 ? "even" : "odd", "number " + i, "");
            }
            List<String> all = new ArrayList<>();
            log.forEach(AuditFilter.ALL, entry -> {
                all.add(entry.subject());
                log.add(null, "Visitor", "even", "added meanwhile", "");
            });
            assertThat(all).hasSize(MANY).startsWith("number 0", "number 1").doesNotContain("added meanwhile");
            List<String> odd = new ArrayList<>();
            log.forEach(AuditFilter.typed("odd", "number"), entry -> odd.add(entry.subject()));
            assertThat(odd).hasSize(MANY / 2).startsWith("number 1", "number 3");
        }
    }

    private static AuditLog log(HikariDataSource source) {
        return new AuditLog(Databases.transactional(source, AuditRepository::new), new SteppingClock());
    }

    private static List<String> subjects(AuditLog log, AuditFilter filter) {
        return log.newest(filter, null, 10).stream().map(AuditEntry::subject).toList();
    }
}
