package org.vanewright.campaign.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.zaxxer.hikari.HikariDataSource;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.vanewright.engineering.flightlog.LogColumn;
import org.vanewright.engineering.flightlog.LogMapping;
import org.vanewright.engineering.flightlog.LogQuantity;
import org.vanewright.engineering.flightlog.LogUnit;
import org.vanewright.engineering.flightlog.RowTally;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.attachment.Attachments;
import org.vanewright.platform.job.JobFailure;
import org.vanewright.platform.job.JobProgress;
import org.vanewright.platform.job.JobStopped;
import org.vanewright.testing.Databases;

/** Keeping and reading logs on one kind of database. */
abstract class LogRepositoryContract {
    private static final Instant NOW = Instant.parse("2026-05-17T10:00:00Z");
    private static final String DRAFT = "00000000-0000-0000-0000-000000000001";
    private static final LogMapping MAPPING = new LogMapping(List.of(
            new LogColumn(LogQuantity.TIME, 0, LogUnit.SECONDS),
            new LogColumn(LogQuantity.AIRSPEED, 1, LogUnit.KM_PER_H)));

    private final HikariDataSource source;
    private final LogRepository logs;
    private final LogReader reader;

    LogRepositoryContract(Databases.Engine engine) {
        this(engine, Attachments.IN_ROWS);
    }

    LogRepositoryContract(Databases.Engine engine, Attachments attachments) {
        source = Databases.migrated(engine);
        logs = Databases.transactional(source, jdbc -> new LogRepository(jdbc, attachments));
        reader = new LogReader(logs, Clock.fixed(NOW, ZoneOffset.UTC));
    }

    @BeforeEach
    void draft() {
        JdbcClient.create(source)
                .sql("insert into draft (id, kind, name, state, version, author_id, author, created_at, changed_at)"
                        + " values (:id, 'campaign', 'Draft', 'DRAFT', 1, 'a', 'A', :at, :at)")
                .param("id", DRAFT)
                .param("at", NOW.atOffset(ZoneOffset.UTC))
                .update();
    }

    final JdbcClient database() {
        return JdbcClient.create(source);
    }

    @AfterEach
    void close() {
        source.close();
    }

    private FlightLog added(String id, byte[] content) {
        FlightLog log = new FlightLog(
                id,
                DRAFT,
                id + ".csv",
                LogFormat.CSV,
                LogState.UPLOADED,
                List.of("t", "é"),
                null,
                0,
                0,
                0,
                0,
                List.of(),
                0,
                null,
                "A",
                NOW);
        logs.add(log, parts -> LogPieces.write(new ByteArrayInputStream(content), 10_000_000, parts));
        return logs.find(id).orElseThrow();
    }

    private static byte[] table(int rows) {
        StringBuilder text = new StringBuilder("t,v\n");
        for (int i = 0; i < rows; i++) {
            text.append(i).append(",100\n");
        }
        return text.append("x,1\n").toString().getBytes(StandardCharsets.UTF_8);
    }

    @Test
    void aFileComesBackByteByByteFromItsPieces() throws IOException {
        byte[] random = new byte[3_000_000];
        new Random(4).nextBytes(random);
        FlightLog log = added("random", random);
        assertThat(log.sizeBytes()).isEqualTo(random.length);
        assertThat(log.header()).containsExactly("t", "é");
        assertThat(logs.part("random", 3)).as("cut into four").isPresent();
        assertThat(logs.part("random", 4)).isEmpty();
        try (InputStream back = LogPieces.read("random", logs)) {
            assertThat(back.readAllBytes()).isEqualTo(random);
        }
        assertThat(logs.ofDraft(DRAFT)).extracting(FlightLog::id).containsExactly("random");
        logs.remove("random");
        assertThat(logs.part("random", 0)).isEmpty();
    }

    @Test
    void nothingIsKeptOfAFileThatIsTooLarge() {
        assertThatThrownBy(() -> added("large", new byte[10_000_001])).isInstanceOf(InvalidInputException.class);
        assertThat(logs.find("large")).isEmpty();
        assertThat(logs.part("large", 0)).isEmpty();
    }

    @Test
    void aMappedLogIsReadAndItsEventsDecided() {
        added("flight", table(200));
        assertThat(logs.withoutJob()).isEmpty();
        logs.map("flight", MAPPING, NOW);
        assertThat(logs.withoutJob()).containsExactly("flight");
        assertThat(logs.setJob("flight", null, "job 1")).isTrue();
        assertThat(logs.setJob("flight", null, "job 2")).isFalse();
        assertThat(logs.job("flight")).contains("job 1");
        assertThat(logs.withoutJob()).isEmpty();
        assertThat(reader.read("flight", JobProgress.UNSEEN).link())
                .isEqualTo("/campaigns/drafts/" + DRAFT + "/logs/flight");
        FlightLog read = logs.find("flight").orElseThrow();
        assertThat(read.state()).isEqualTo(LogState.READ);
        assertThat(read.percent()).isEqualTo(100);
        assertThat(read.mapping()).isEqualTo(MAPPING);
        assertThat(read.rows()).isEqualTo(201);
        assertThat(read.firstBadRows()).extracting(RowTally.BadRow::row).containsExactly(202L);
        assertThat(logs.trace("flight")).hasSizeGreaterThan(100);
        assertThat(logs.trace("flight").get(0).leastKt()).isEqualTo(100 / 1.852);
        assertThat(logs.trace("flight").get(0).altitudeFt()).isNaN();
        assertThat(logs.events("flight")).as("no altitude, so no cruise").isEmpty();
        assertThat(reader.read("flight", JobProgress.UNSEEN).link())
                .as("once more")
                .isNotNull();
        logs.giveUp("flight", "job 1", "too late", NOW);
        assertThat(logs.find("flight").orElseThrow()).isEqualTo(read);
    }

    @Test
    void aLogThatCannotBeReadSaysWhy() {
        added("bad", "t,v\nx,1\n".getBytes(StandardCharsets.UTF_8));
        logs.map("bad", MAPPING, NOW);
        assertThatThrownBy(() -> reader.read("bad", JobProgress.UNSEEN)).isInstanceOf(JobFailure.class);
        FlightLog bad = logs.find("bad").orElseThrow();
        assertThat(bad.state()).isEqualTo(LogState.FAILED);
        assertThat(bad.problem()).isEqualTo("No row of it can be read.");
        assertThat(bad.firstBadRows()).hasSize(1);
        added("endless", ("t,v\n" + "1".repeat(500_000)).getBytes(StandardCharsets.UTF_8));
        logs.map("endless", MAPPING, NOW);
        assertThatThrownBy(() -> reader.read("endless", JobProgress.UNSEEN)).isInstanceOf(JobFailure.class);
        assertThat(logs.find("endless").orElseThrow().problem()).contains("64 KiB");
    }

    @Test
    void theLastReaderHoldsALog() {
        added("held", table(3));
        logs.map("held", MAPPING, NOW);
        assertThat(logs.claim("held", "one", NOW)).isTrue();
        assertThat(logs.progress("held", "two", 5, new RowTally(), NOW)).isFalse();
        assertThat(logs.progress("held", "one", 5, new RowTally(), NOW)).isTrue();
        assertThat(logs.find("held").orElseThrow().readBytes()).isEqualTo(5);
        assertThat(logs.claim("held", "two", NOW)).isTrue();
        assertThat(logs.progress("held", "one", 6, new RowTally(), NOW)).isFalse();
        logs.setJob("held", null, "job 1");
        logs.giveUp("held", "job 0", "nobody's", NOW);
        assertThat(logs.find("held").orElseThrow().state()).isEqualTo(LogState.READING);
        logs.giveUp("held", "job 1", "It was cancelled.", NOW);
        assertThat(logs.find("held").orElseThrow().problem()).isEqualTo("It was cancelled.");
        assertThat(logs.claim("held", "three", NOW)).isFalse();
        logs.remove("held");
        assertThat(logs.progress("held", "two", 7, new RowTally(), NOW))
                .as("removed")
                .isFalse();
        assertThatThrownBy(() -> reader.read("held", JobProgress.UNSEEN)).isInstanceOf(JobStopped.class);
    }

    @Test
    void aMappingIsRememberedByItsHeader() {
        String key = "0".repeat(64);
        assertThat(logs.remembered(key)).isEmpty();
        logs.remember(key, MAPPING, NOW);
        logs.remember(key, MAPPING, NOW);
        assertThat(logs.remembered(key)).isEqualTo(Optional.of(MAPPING));
    }
}
