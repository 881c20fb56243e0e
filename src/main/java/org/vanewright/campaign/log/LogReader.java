package org.vanewright.campaign.log;

import jakarta.annotation.PreDestroy;
import java.io.IOException;
import java.io.InputStream;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.UUID;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;
import org.vanewright.engineering.flightlog.CsvLog;
import org.vanewright.engineering.flightlog.GpxLog;
import org.vanewright.engineering.flightlog.LogScan;
import org.vanewright.engineering.flightlog.RowTally;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * Reads logs one after another in the background. What a crash left half read is read again, by whichever instance
 * looks first.
 */
@Component
class LogReader {
    private static final Logger LOG = LoggerFactory.getLogger(LogReader.class);
    /** A reader that has reported nothing for so long is gone. */
    private static final Duration SILENCE = Duration.ofMinutes(2);

    private final LogRepository logs;
    private final Clock clock;
    private volatile boolean stopped;
    private final ExecutorService executor =
            new ThreadPoolExecutor(1, 1, 1, TimeUnit.MINUTES, new LinkedBlockingQueue<>(), work -> {
                Thread thread = new Thread(work, "flight-logs");
                thread.setDaemon(true);
                return thread;
            });

    LogReader(LogRepository logs, Clock clock) {
        this.logs = logs;
        this.clock = clock;
    }

    /** Reads what waits, soon. */
    Future<?> wake() {
        return executor.submit(this::readAll);
    }

    @Scheduled(initialDelay = 10, fixedDelay = 60, timeUnit = TimeUnit.SECONDS)
    void lookForWhatWasLeft() {
        wake();
    }

    /** Without interrupting, which would close the file of a database beneath it. */
    @PreDestroy
    void stop() {
        stopped = true;
        executor.shutdown();
    }

    private void readAll() {
        try {
            for (String id : logs.waiting(clock.instant().minus(SILENCE))) {
                if (stopped) {
                    return;
                }
                read(id);
            }
        } catch (RuntimeException e) {
            // Asked again within a minute.
            LOG.warn("recorded logs could not be looked for", e);
        }
    }

    void read(String id) {
        Instant now = clock.instant();
        String claim = UUID.randomUUID().toString();
        if (!logs.claim(id, claim, now.minus(SILENCE), now)) {
            return;
        }
        RowTally tally = new RowTally();
        try (InputStream file = LogPieces.read(id, logs)) {
            LogScan scan = new LogScan();
            FlightLog log = logs.find(id).orElseThrow(LostClaim::new);
            InputStream counted = new CountedFile(file, bytes -> {
                if (stopped || !logs.progress(id, claim, bytes, tally, clock.instant())) {
                    throw new LostClaim();
                }
            });
            if (log.format() == LogFormat.GPX) {
                new GpxLog(counted).read(scan, tally);
            } else {
                new CsvLog(counted).read(Objects.requireNonNull(log.mapping()), scan, tally);
            }
            if (tally.rows() == tally.bad()) {
                logs.fail(id, claim, "No row of it can be read.", tally, clock.instant());
            } else {
                logs.finish(id, claim, tally, scan.finish(), clock.instant());
            }
        } catch (LostClaim e) {
            LOG.info("reading of recorded log {} stopped", id);
        } catch (InvalidInputException e) {
            String words = e.problems().get(0).value() + "; allowed is "
                    + e.problems().get(0).allowed();
            logs.fail(id, claim, "It holds " + words + ".", tally, clock.instant());
        } catch (IOException | RuntimeException e) {
            LOG.error("recorded log {} could not be read", id, e);
            logs.fail(id, claim, "It could not be read here. The service's log says why.", tally, clock.instant());
        }
    }

    private static final class LostClaim extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }
}
