package org.vanewright.campaign.log;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Clock;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.campaign.CampaignService;
import org.vanewright.campaign.PointDocument;
import org.vanewright.campaign.Recording;
import org.vanewright.engineering.flightlog.CsvLog;
import org.vanewright.engineering.flightlog.FoundEvent;
import org.vanewright.engineering.flightlog.LogMapping;
import org.vanewright.engineering.flightlog.TracePoint;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.record.Draft;
import org.vanewright.record.DraftNotFoundException;

/**
 * Recorded logs of the drafts of whoever asks. A log is found by whoever finds its draft, and changed by whoever may
 * write that while it is open.
 */
@Service
public class FlightLogs {
    /** Logs of one draft. */
    public static final int MAX_LOGS = 10;
    /** Largest file. */
    public static final long MAX_BYTES = 150_000_000;

    private static final int MARK = 8192;

    private final LogRepository logs;
    private final LogReading reading;
    private final LogMeter meter;
    private final CampaignService campaigns;
    private final Recording recording;
    private final Clock clock;

    FlightLogs(
            LogRepository logs,
            LogReading reading,
            LogMeter meter,
            CampaignService campaigns,
            Recording recording,
            Clock clock) {
        this.logs = logs;
        this.reading = reading;
        this.meter = meter;
        this.campaigns = campaigns;
        this.recording = recording;
        this.clock = clock;
    }

    public List<FlightLog> of(String draftId) {
        return logs.ofDraft(campaigns.drafts().find(draftId).id());
    }

    /** @throws DraftNotFoundException if the draft has none such, too */
    public FlightLog find(String draftId, String logId) {
        String draft = campaigns.drafts().find(draftId).id();
        return logs.find(logId).filter(l -> l.draftId().equals(draft)).orElseThrow(DraftNotFoundException::new);
    }

    /** Lets pass whoever may add a log to that draft. */
    public Draft<CampaignDocument> requireOpen(String draftId) {
        campaigns.drafts().requireAuthor();
        return campaigns.drafts().open(draftId);
    }

    /**
     * Keeps a file. A GPX file is read at once; a table waits until its columns are named.
     *
     * @throws InvalidInputException naming {@code file} for what is no log
     */
    @Transactional
    public FlightLog add(String draftId, @Nullable String fileName, InputStream file) {
        Draft<CampaignDocument> draft = requireOpen(draftId);
        if (logs.ofDraft(draftId).size() >= MAX_LOGS) {
            throw refused(MAX_LOGS + " logs", "at most " + MAX_LOGS + " logs of one draft; remove one first");
        }
        BufferedInputStream peeked = new BufferedInputStream(file, 256 * 1024);
        LogFormat format = format(peeked);
        List<String> header = format == LogFormat.GPX ? List.of() : header(peeked);
        FlightLog log = new FlightLog(
                UUID.randomUUID().toString(),
                draft.id(),
                name(fileName),
                format,
                format == LogFormat.GPX ? LogState.MAPPED : LogState.UPLOADED,
                header,
                null,
                0,
                0,
                0,
                0,
                List.of(),
                0,
                null,
                draft.author().name(),
                clock.instant());
        logs.add(log, parts -> LogPieces.write(peeked, MAX_BYTES, parts));
        if (format == LogFormat.GPX) {
            reading.start(log.id(), log.name());
        }
        return find(draftId, log.id());
    }

    private static LogFormat format(BufferedInputStream file) {
        try {
            file.mark(MARK);
            String begin = new String(file.readNBytes(512), StandardCharsets.UTF_8);
            file.reset();
            String plain = begin.replace("\uFEFF", "").stripLeading();
            if (plain.isEmpty()) {
                throw refused("an empty file", "a table of comma-separated values or a GPX file");
            }
            return plain.startsWith("<") ? LogFormat.GPX : LogFormat.CSV;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> header(BufferedInputStream file) {
        try {
            file.mark(512 * 1024);
            List<String> header = new CsvLog(file).header();
            file.reset();
            return header.stream().map(FlightLogs::shown).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String shown(String name) {
        return name.length() <= 60 ? name : name.substring(0, 59) + "…";
    }

    /** The last part of a file's name, of letters, digits and a few signs. */
    private static String name(@Nullable String given) {
        String last =
                given == null ? "" : given.replaceFirst("^.*[/\\\\]", "").replaceAll("[^\\p{L}\\p{N} ._()-]", "_");
        String plain = last.isBlank() ? "log" : last;
        return plain.length() <= 100 ? plain : plain.substring(plain.length() - 100);
    }

    /** The first rows of a table, for whoever says what its columns are. */
    public List<List<String>> firstRows(String draftId, String logId) {
        FlightLog log = find(draftId, logId);
        try (InputStream file = LogPieces.read(log.id(), logs)) {
            return new CsvLog(file).firstRows(3);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** How columns under that header were last read by anybody here. */
    public Optional<LogMapping> remembered(String draftId, String logId) {
        return logs.remembered(key(find(draftId, logId).header()));
    }

    /**
     * Says what the columns are, and reads the log, again where it was read before. What was found before and is not
     * accepted is gone; test points stay.
     */
    @Transactional
    public void map(String draftId, String logId, LogMapping mapping) {
        requireOpen(draftId);
        FlightLog log = find(draftId, logId);
        if (log.format() == LogFormat.GPX) {
            throw refused("a GPX file", "a table; a GPX file needs no columns named");
        }
        Checks checks = new Checks();
        mapping.columns()
                .forEach(c -> checks.require(
                        c.column() < log.header().size(),
                        LogMapping.field(c.quantity()),
                        c.column() + 1,
                        "a column from 1 to " + log.header().size()));
        checks.throwIfAny();
        logs.map(logId, mapping, clock.instant());
        logs.remember(key(log.header()), mapping, clock.instant());
        reading.start(logId, log.name());
    }

    private static String key(List<String> header) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            String line = String.join("\u001f", header).toLowerCase(Locale.ROOT);
            return HexFormat.of().formatHex(digest.digest(line.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Takes the log away, and stops whoever reads it. Test points that came from it stay. */
    @Transactional
    public void remove(String draftId, String logId) {
        requireOpen(draftId);
        String log = find(draftId, logId).id();
        reading.abandon(log);
        logs.remove(log);
    }

    /** The job that reads it, or has read it. */
    public Optional<String> job(String draftId, String logId) {
        return logs.job(find(draftId, logId).id());
    }

    public List<TracePoint> trace(String draftId, String logId) {
        return logs.trace(find(draftId, logId).id());
    }

    public List<LogEvent> events(String draftId, String logId) {
        return logs.events(find(draftId, logId).id());
    }

    /** Leaves events out, but for those that are test points already. */
    public void drop(String draftId, String logId, List<Integer> numbers) {
        requireOpen(draftId);
        for (LogEvent event : chosen(draftId, logId, numbers)) {
            if (event.decision() != LogEvent.Decision.ACCEPTED) {
                logs.decide(logId, new LogEvent(event.number(), event.found(), LogEvent.Decision.DROPPED, null));
            }
        }
    }

    /**
     * Makes a test point of events, as the person has seen and changed it. Accepted twice, it counts once.
     *
     * @param numbers one event, or the legs of one airspeed calibration
     * @param moved a single event as it was measured last
     * @throws InvalidInputException with every problem of the point, its fields named as in it
     */
    public void accept(String draftId, String logId, List<Integer> numbers, PointDocument point, FoundEvent moved) {
        requireOpen(draftId);
        List<LogEvent> events = chosen(draftId, logId, numbers);
        recording.add(draftId, List.of(point));
        for (LogEvent event : events) {
            FoundEvent found = events.size() == 1 ? moved : event.found();
            logs.decide(logId, new LogEvent(event.number(), found, LogEvent.Decision.ACCEPTED, point.id()));
        }
    }

    /**
     * An event as it is between other times, by reading the log again. Nothing is kept of it.
     *
     * @throws InvalidInputException fields {@code startS}, {@code endS}: no interval that can be measured, or nothing was
     *     recorded in it
     */
    public FoundEvent measure(String draftId, String logId, FoundEvent event, double startS, double endS) {
        requireOpen(draftId);
        return meter.measure(find(draftId, logId), event, startS, endS);
    }

    /** @throws DraftNotFoundException if one is not in the log */
    public List<LogEvent> chosen(String draftId, String logId, List<Integer> numbers) {
        List<LogEvent> all = events(draftId, logId);
        return numbers.stream()
                .distinct()
                .map(n ->
                        all.stream().filter(e -> e.number() == n).findFirst().orElseThrow(DraftNotFoundException::new))
                .toList();
    }

    private static InvalidInputException refused(String value, String allowed) {
        return new InvalidInputException(new FieldProblem("file", value, allowed));
    }
}
