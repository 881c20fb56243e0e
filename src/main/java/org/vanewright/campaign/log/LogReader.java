package org.vanewright.campaign.log;

import java.io.IOException;
import java.io.InputStream;
import java.time.Clock;
import java.util.Objects;
import java.util.UUID;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;
import org.vanewright.engineering.flightlog.CsvLog;
import org.vanewright.engineering.flightlog.GpxLog;
import org.vanewright.engineering.flightlog.LogScan;
import org.vanewright.engineering.flightlog.RowTally;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.Outage;
import org.vanewright.platform.job.JobFailure;
import org.vanewright.platform.job.JobProgress;
import org.vanewright.platform.job.JobResult;
import org.vanewright.platform.job.JobStopped;

/** Reads a log from its beginning to its end, and keeps what was found. */
@Component
class LogReader {
    private static final Logger LOG = LoggerFactory.getLogger(LogReader.class);

    private final LogRepository logs;
    private final Clock clock;

    LogReader(LogRepository logs, Clock clock) {
        this.logs = logs;
        this.clock = clock;
    }

    /**
     * Reads it, unless that is done already.
     *
     * @throws JobStopped where it was removed, or is read by somebody else by now
     * @throws JobFailure with the words that the log has, too
     */
    JobResult read(String id, JobProgress progress) {
        String claim = UUID.randomUUID().toString();
        boolean unread = logs.claim(id, claim, clock.instant());
        FlightLog log = logs.find(id).orElseThrow(() -> new JobStopped(JobStopped.Reason.CANCELLED));
        if (unread) {
            RowTally tally = new RowTally();
            try {
                read(log, claim, tally, progress);
            } catch (InvalidInputException e) {
                String words = e.problems().get(0).value() + "; allowed is "
                        + e.problems().get(0).allowed();
                fail(id, claim, "It holds " + words + ".", tally);
            } catch (IOException e) {
                LOG.error("recorded log {} could not be read", id, e);
                fail(id, claim, "It could not be read here. The service's log says why.", tally);
            }
        }
        return JobResult.at("/campaigns/drafts/" + log.draftId() + "/logs/" + id);
    }

    private void read(FlightLog log, String claim, RowTally tally, JobProgress progress) throws IOException {
        try (InputStream file = LogPieces.read(log.id(), logs)) {
            LogScan scan = new LogScan();
            InputStream counted = new CountedFile(file, bytes -> {
                progress.report(bytes, log.sizeBytes(), tally.rows() + " rows");
                if (!logs.progress(log.id(), claim, bytes, tally, clock.instant())) {
                    throw new JobStopped(JobStopped.Reason.CANCELLED);
                }
            });
            if (log.format() == LogFormat.GPX) {
                new GpxLog(counted).read(scan, tally);
            } else {
                new CsvLog(counted).read(Objects.requireNonNull(log.mapping()), scan, tally);
            }
            if (tally.rows() == tally.bad()) {
                fail(log.id(), claim, "No row of it can be read.", tally);
            }
            logs.finish(log.id(), claim, tally, scan.finish(), clock.instant());
        } catch (JobStopped | JobFailure e) {
            throw e;
        } catch (RuntimeException e) {
            if (e instanceof InvalidInputException || Outage.of(e) != null) {
                throw e;
            }
            LOG.error("recorded log {} could not be read", log.id(), e);
            fail(log.id(), claim, "It could not be read here. The service's log says why.", tally);
        }
    }

    private void fail(String id, String claim, String words, RowTally tally) {
        logs.fail(id, claim, words, tally, clock.instant());
        throw new JobFailure(words);
    }
}
