package org.vanewright.campaign.log;

import java.time.Clock;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;
import org.vanewright.platform.job.JobKind;
import org.vanewright.platform.job.JobProgress;
import org.vanewright.platform.job.JobResult;
import org.vanewright.platform.job.Jobs;

/** The reading of a log as a job. */
@Component
class LogReading implements JobKind<LogReading.Parameters> {
    private static final Logger LOG = LoggerFactory.getLogger(LogReading.class);

    private final LogRepository logs;
    private final LogReader reader;
    private final ObjectProvider<Jobs> jobs;
    private final Clock clock;

    /** The queue is made of all kinds of jobs, this one among them, so that it is asked for later. */
    LogReading(LogRepository logs, LogReader reader, ObjectProvider<Jobs> jobs, Clock clock) {
        this.logs = logs;
        this.reader = reader;
        this.jobs = jobs;
        this.clock = clock;
    }

    /** @param logId of the log to be read */
    record Parameters(String logId) {}

    @Override
    public String name() {
        return "flight-log";
    }

    @Override
    public Class<Parameters> parameters() {
        return Parameters.class;
    }

    @Override
    public JobResult run(Parameters parameters, JobProgress progress) {
        return reader.read(parameters.logId(), progress);
    }

    @Override
    public void gaveUp(String jobId, Parameters parameters, String words) {
        logs.giveUp(parameters.logId(), jobId, words, clock.instant());
    }

    /** Has it read, in the name of the one who asks; whoever was at it before stops. */
    void start(String logId, String name) {
        String former = logs.job(logId).orElse(null);
        String job = jobs.getObject().start(this, "Reading " + name, new Parameters(logId));
        logs.setJob(logId, former, job);
        if (former != null) {
            jobs.getObject().abandon(former);
        }
    }

    /** Nobody reads it any more. */
    void abandon(String logId) {
        logs.job(logId).ifPresent(job -> jobs.getObject().abandon(job));
    }

    @Scheduled(initialDelay = 10, fixedDelay = 3600, timeUnit = TimeUnit.SECONDS)
    void startWhatAnEarlierVersionLeft() {
        for (String id : logs.withoutJob()) {
            String job = jobs.getObject().startUnasked(this, "Reading a recorded log", new Parameters(id));
            if (!logs.setJob(id, null, job)) {
                LOG.info("another instance reads recorded log {}", id);
                jobs.getObject().abandon(job);
            }
        }
    }
}
