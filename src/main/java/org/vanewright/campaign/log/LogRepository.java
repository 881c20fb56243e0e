package org.vanewright.campaign.log;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import org.vanewright.engineering.flightlog.LogMapping;
import org.vanewright.engineering.flightlog.LogScan;
import org.vanewright.engineering.flightlog.RowTally;
import org.vanewright.engineering.flightlog.TracePoint;
import org.vanewright.platform.attachment.Attachments;

/** Keeps logs. Whoever reads one holds a claim on it, so that no two instances read the same. */
@Repository
class LogRepository {
    private static final String COLUMNS =
            "id, draft_id, name, format, state, header, mapping, size_bytes, read_bytes, row_count, bad_count, bad_rows,"
                    + " left_count, problem, person, created_at";

    static final String FOLDER = "flight-logs";

    private final JdbcClient jdbc;
    private final Attachments attachments;

    LogRepository(JdbcClient jdbc, Attachments attachments) {
        this.jdbc = jdbc;
        this.attachments = attachments;
    }

    private static String key(String id, int number) {
        return FOLDER + "/" + id + "/" + number;
    }

    /** Writes the pieces of a file after its log is known. */
    @FunctionalInterface
    interface Content {
        /** @return size of the file before it was packed */
        long write(PartSink parts);
    }

    /** Takes a piece. */
    @FunctionalInterface
    interface PartSink {
        void add(byte[] piece);
    }

    /** The log with its whole content, or nothing. */
    @Transactional
    public void add(FlightLog log, Content content) {
        jdbc.sql("insert into flight_log (id, draft_id, name, format, state, header, size_bytes, person, created_at,"
                        + " changed_at) values (:id, :draft, :name, :format, :state, :header, 0, :person, :at, :at)")
                .param("id", log.id())
                .param("draft", log.draftId())
                .param("name", log.name())
                .param("format", log.format().name())
                .param("state", log.state().name())
                .param("header", LogJson.write(log.header()))
                .param("person", log.person())
                .param("at", utc(log.createdAt()))
                .update();
        int[] number = {0};
        long size = content.write(piece -> addPiece(log.id(), number[0]++, piece));
        jdbc.sql("update flight_log set size_bytes = :size where id = :id")
                .param("size", size)
                .param("id", log.id())
                .update();
    }

    private void addPiece(String id, int number, byte[] piece) {
        jdbc.sql("insert into flight_log_part (log_id, number, content) values (:id, :number, :content)")
                .param("id", id)
                .param("number", number)
                .param("content", attachments.keep(key(id, number), piece), Types.VARBINARY)
                .update();
    }

    public Optional<byte[]> part(String id, int number) {
        return jdbc.sql("select content from flight_log_part where log_id = :id and number = :number")
                .param("id", id)
                .param("number", number)
                .query((row, n) -> new Piece(row.getBytes("content")))
                .optional()
                .map(piece -> attachments.read(piece.content(), key(id, number)));
    }

    /** Nothing where the bytes lie outside. */
    @SuppressWarnings("ArrayRecordComponent") // bytes on their way out, never compared
    private record Piece(byte @Nullable [] content) {}

    /** Those of the logs that are kept here. */
    public Set<String> existing(Collection<String> ids) {
        return ids.isEmpty()
                ? Set.of()
                : Set.copyOf(jdbc.sql("select id from flight_log where id in (:ids)")
                        .param("ids", ids)
                        .query(String.class)
                        .list());
    }

    public List<FlightLog> ofDraft(String draftId) {
        return jdbc.sql("select " + COLUMNS + " from flight_log where draft_id = :draft order by created_at, id")
                .param("draft", draftId)
                .query((row, n) -> log(row))
                .list();
    }

    public Optional<FlightLog> find(String id) {
        return jdbc.sql("select " + COLUMNS + " from flight_log where id = :id")
                .param("id", id)
                .query((row, n) -> log(row))
                .optional();
    }

    private static FlightLog log(ResultSet row) throws SQLException {
        return new FlightLog(
                row.getString("id"),
                row.getString("draft_id"),
                row.getString("name"),
                LogFormat.valueOf(row.getString("format")),
                LogState.valueOf(row.getString("state")),
                LogJson.header(row.getString("header")),
                LogJson.mapping(row.getString("mapping")),
                row.getLong("size_bytes"),
                row.getLong("read_bytes"),
                row.getLong("row_count"),
                row.getLong("bad_count"),
                LogJson.badRows(row.getString("bad_rows")),
                row.getLong("left_count"),
                row.getString("problem"),
                row.getString("person"),
                row.getObject("created_at", OffsetDateTime.class).toInstant());
    }

    public void remove(String id) {
        jdbc.sql("delete from flight_log where id = :id").param("id", id).update();
    }

    public void removeOfDraft(String draftId) {
        jdbc.sql("delete from flight_log where draft_id = :draft")
                .param("draft", draftId)
                .update();
    }

    /** Lets it be read, again where it was read before; what was found before is gone. */
    @Transactional
    public void map(String id, @Nullable LogMapping mapping, Instant at) {
        jdbc.sql("delete from flight_log_event where log_id = :id")
                .param("id", id)
                .update();
        jdbc.sql("update flight_log set state = 'MAPPED', mapping = :mapping, read_bytes = 0, row_count = 0,"
                        + " bad_count = 0, bad_rows = null, trace = null, left_count = 0, problem = null, claim = null,"
                        + " changed_at = :at where id = :id")
                .param("mapping", mapping == null ? null : LogJson.write(mapping))
                .param("at", utc(at))
                .param("id", id)
                .update();
    }

    /** Logs that were to be read by an earlier version of the service. */
    public List<String> withoutJob() {
        return jdbc.sql("select id from flight_log where state in ('MAPPED', 'READING') and job_id is null"
                        + " order by created_at")
                .query(String.class)
                .list();
    }

    /** The job that reads it. */
    public Optional<String> job(String id) {
        return jdbc.sql("select job_id from flight_log where id = :id and job_id is not null")
                .param("id", id)
                .query(String.class)
                .optional();
    }

    /** False where it is not {@code former} any more that reads it. */
    public boolean setJob(String id, @Nullable String former, String job) {
        return jdbc.sql("update flight_log set job_id = :job where id = :id"
                                + " and coalesce(job_id, 'none') = coalesce(:former, 'none')")
                        .param("job", job)
                        .param("id", id)
                        .param("former", former, Types.VARCHAR)
                        .update()
                == 1;
    }

    /** Whether the claim is the caller's now, whoever else held one. */
    public boolean claim(String id, String claim, Instant at) {
        return jdbc.sql("update flight_log set state = 'READING', claim = :claim, read_bytes = 0, changed_at = :at"
                                + " where id = :id and state in ('MAPPED', 'READING')")
                        .param("claim", claim)
                        .param("at", utc(at))
                        .param("id", id)
                        .update()
                == 1;
    }

    /** Nobody will read it, unless another job than that one was to do so. */
    public void giveUp(String id, String job, String problem, Instant at) {
        jdbc.sql("update flight_log set state = 'FAILED', problem = :problem, claim = null, changed_at = :at"
                        + " where id = :id and job_id = :job and state in ('MAPPED', 'READING')")
                .param("problem", problem)
                .param("at", utc(at))
                .param("id", id)
                .param("job", job)
                .update();
    }

    /** False where the claim is lost: the log was removed, or another reader took it. */
    public boolean progress(String id, String claim, long bytes, RowTally tally, Instant at) {
        return jdbc.sql("update flight_log set read_bytes = :bytes, row_count = :rows, bad_count = :bad,"
                                + " changed_at = :at where id = :id and claim = :claim and state = 'READING'")
                        .param("bytes", bytes)
                        .param("rows", tally.rows())
                        .param("bad", tally.bad())
                        .param("at", utc(at))
                        .param("id", id)
                        .param("claim", claim)
                        .update()
                == 1;
    }

    /** Keeps what was found, unless the claim is lost. */
    @Transactional
    public void finish(String id, String claim, RowTally tally, LogScan.Findings findings, Instant at) {
        int updated = jdbc.sql("update flight_log set state = 'READ', read_bytes = size_bytes, row_count = :rows,"
                        + " bad_count = :bad, bad_rows = :badRows, trace = :trace, left_count = :left, claim = null,"
                        + " changed_at = :at where id = :id and claim = :claim")
                .param("rows", tally.rows())
                .param("bad", tally.bad())
                .param("badRows", LogJson.write(tally.first()))
                .param("trace", LogJson.write(findings.trace()))
                .param("left", findings.left())
                .param("at", utc(at))
                .param("id", id)
                .param("claim", claim)
                .update();
        for (int i = 0; updated == 1 && i < findings.events().size(); i++) {
            jdbc.sql("insert into flight_log_event (log_id, number, content, decision)"
                            + " values (:id, :number, :content, 'OPEN')")
                    .param("id", id)
                    .param("number", i + 1)
                    .param("content", LogJson.write(findings.events().get(i)))
                    .update();
        }
    }

    public void fail(String id, String claim, String problem, RowTally tally, Instant at) {
        jdbc.sql("update flight_log set state = 'FAILED', problem = :problem, row_count = :rows, bad_count = :bad,"
                        + " bad_rows = :badRows, claim = null, changed_at = :at where id = :id and claim = :claim")
                .param("problem", problem.length() <= 1000 ? problem : problem.substring(0, 1000))
                .param("rows", tally.rows())
                .param("bad", tally.bad())
                .param("badRows", LogJson.write(tally.first()))
                .param("at", utc(at))
                .param("id", id)
                .param("claim", claim)
                .update();
    }

    public List<TracePoint> trace(String id) {
        return LogJson.trace(jdbc.sql("select trace from flight_log where id = :id")
                .param("id", id)
                .query((row, n) -> Optional.ofNullable(row.getString("trace")))
                .optional()
                .flatMap(t -> t)
                .orElse(null));
    }

    public List<LogEvent> events(String id) {
        return jdbc.sql("select number, content, decision, point_id from flight_log_event where log_id = :id"
                        + " order by number")
                .param("id", id)
                .query((row, n) -> new LogEvent(
                        row.getInt("number"),
                        LogJson.event(row.getString("content")),
                        LogEvent.Decision.valueOf(row.getString("decision")),
                        row.getString("point_id")))
                .list();
    }

    public void decide(String id, LogEvent event) {
        jdbc.sql("update flight_log_event set content = :content, decision = :decision, point_id = :point"
                        + " where log_id = :id and number = :number")
                .param("content", LogJson.write(event.found()))
                .param("decision", event.decision().name())
                .param("point", event.pointId())
                .param("id", id)
                .param("number", event.number())
                .update();
    }

    /** Two may say so at once of logs with the same header; one of them stands. */
    @Transactional
    public void remember(String headerSha256, LogMapping mapping, Instant at) {
        int known = jdbc.sql("update flight_log_mapping set mapping = :mapping, changed_at = :at"
                        + " where header_sha256 = :header")
                .param("header", headerSha256)
                .param("mapping", LogJson.write(mapping))
                .param("at", utc(at))
                .update();
        if (known == 0) {
            jdbc.sql("insert into flight_log_mapping (header_sha256, mapping, changed_at)"
                            + " values (:header, :mapping, :at) on conflict do nothing")
                    .param("header", headerSha256)
                    .param("mapping", LogJson.write(mapping))
                    .param("at", utc(at))
                    .update();
        }
    }

    public Optional<LogMapping> remembered(String headerSha256) {
        return jdbc.sql("select mapping from flight_log_mapping where header_sha256 = :header")
                .param("header", headerSha256)
                .query(String.class)
                .optional()
                .map(LogJson::mapping);
    }

    private static OffsetDateTime utc(Instant at) {
        return at.atOffset(ZoneOffset.UTC);
    }
}
