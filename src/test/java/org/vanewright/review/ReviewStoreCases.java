package org.vanewright.review;

import static org.assertj.core.api.Assertions.assertThat;

import com.zaxxer.hikari.HikariDataSource;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.vanewright.record.PersonRef;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.check.CheckResult;
import org.vanewright.testing.Databases;

/** Claims, remarks and results as they are kept, on every database. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class ReviewStoreCases {
    private static final Instant AT = Instant.parse("2026-03-01T09:00:00.123456Z");
    private static final PersonRef MIA = new PersonRef("mia", "Mia");
    private static final PersonRef MAX = new PersonRef("max", "Max");

    private final HikariDataSource database;
    private final ClaimRepository claims;
    private final RemarkRepository remarks;
    private final CheckRepository checks;

    ReviewStoreCases(Databases.Engine engine) {
        database = Databases.migrated(engine);
        JdbcClient jdbc = JdbcClient.create(database);
        claims = new ClaimRepository(jdbc);
        remarks = new RemarkRepository(jdbc);
        checks = new CheckRepository(jdbc);
    }

    @AfterAll
    void close() {
        database.close();
    }

    @Test
    void onePersonAtATimeHasAClaim() {
        RevisionRef ref = new RevisionRef("claimed", 1);
        assertThat(claims.find("device", ref)).isEmpty();
        assertThat(claims.insert("device", ref, MIA, AT)).isTrue();
        assertThat(claims.insert("device", ref, MAX, AT)).isFalse();
        assertThat(claims.insert("airframe", ref, MAX, AT)).isTrue();
        assertThat(claims.find("device", ref)).contains(new Claim(MIA, AT));
        assertThat(claims.delete("device", ref, "max")).isFalse();
        assertThat(claims.move("device", ref, "max", MIA, AT)).isFalse();
        assertThat(claims.move("device", ref, "mia", MAX, AT)).isTrue();
        assertThat(claims.find("device", ref)).contains(new Claim(MAX, AT));
        assertThat(claims.delete("device", ref, "max")).isTrue();
        assertThat(claims.find("device", ref)).isEmpty();
    }

    @Test
    void remarksStayInOrder() {
        RevisionRef ref = new RevisionRef("remarked", 2);
        Remark first = new Remark("vane.heightMm", "Too tall — “really”", MIA, AT);
        Remark second = new Remark("", "Otherwise fine", MAX, AT);
        remarks.insert("device", ref, first);
        remarks.insert("device", ref, second);
        remarks.insert("device", new RevisionRef("remarked", 1), second);
        assertThat(remarks.of("device", ref)).containsExactly(first, second);
        assertThat(remarks.of("layout", ref)).isEmpty();
    }

    @Test
    void theLastRunOfTheChecksStands() {
        RevisionRef ref = new RevisionRef("checked", 1);
        checks.replace("device", ref, List.of(CheckResult.failed("A", "a"), CheckResult.passed("B", "b")), AT);
        List<CheckResult> last = List.of(CheckResult.noticed("B", "again"));
        checks.replace("device", ref, last, AT);
        assertThat(checks.of("device", ref)).isEqualTo(last);
        checks.replace("device", ref, List.of(CheckResult.passed("x".repeat(500), "y".repeat(5000))), AT);
        assertThat(checks.of("device", ref).get(0).detail()).hasSize(2000).endsWith("…");
    }
}
