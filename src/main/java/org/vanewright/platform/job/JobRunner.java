package org.vanewright.platform.job;

import com.github.kagkarlsson.scheduler.SchedulerState;
import io.micrometer.core.instrument.MeterRegistry;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.Outage;
import tools.jackson.databind.json.JsonMapper;

/** Runs one job from its beginning to its end. */
@Component
class JobRunner {
    /** A job that has ended so many processes would end the next one, too. */
    static final int MOST_ATTEMPTS = 5;

    private static final Logger LOG = LoggerFactory.getLogger(JobRunner.class);
    private static final String CANCELLED = "It was cancelled.";
    private static final Duration TOLD_EVERY = Duration.ofMillis(250);

    private final JobRepository jobs;
    private final Map<String, JobKind<?>> kinds;
    private final JsonMapper mapper;
    private final Clock clock;
    private final MeterRegistry meters;

    JobRunner(JobRepository jobs, List<JobKind<?>> kinds, JsonMapper mapper, Clock clock, MeterRegistry meters) {
        this.jobs = jobs;
        this.kinds = kinds.stream().collect(Collectors.toMap(JobKind::name, Function.identity()));
        this.mapper = mapper;
        this.clock = clock;
        this.meters = meters;
    }

    /** @throws RuntimeException where it is to be run again later */
    void run(String id, SchedulerState process) {
        String claim = UUID.randomUUID().toString();
        if (!jobs.begin(id, claim, clock.instant())) {
            return;
        }
        Job job = jobs.find(id).orElseThrow();
        if (jobs.isCancelAsked(id)) {
            giveUp(job, claim, JobState.CANCELLED, CANCELLED);
        } else if (job.attempts() > MOST_ATTEMPTS) {
            giveUp(job, claim, JobState.FAILED, "It was begun " + MOST_ATTEMPTS + " times and never came to an end.");
        } else {
            attempt(job, claim, process);
        }
    }

    private void attempt(Job job, String claim, SchedulerState process) {
        try {
            JobKind<?> kind = kinds.get(job.kind());
            if (kind == null) {
                throw new JobFailure("This version of the service cannot do that any more.");
            }
            end(job, claim, JobState.DONE, result(kind, job, new Told(job.id(), claim, process)), null);
        } catch (JobStopped stopped) {
            stopped(job, claim, stopped);
        } catch (JobFailure e) {
            end(job, claim, JobState.FAILED, null, e.getMessage());
        } catch (InvalidInputException e) {
            String words = e.problems().stream()
                    .map(p -> p.field() + " is " + p.value() + ", but must be " + p.allowed() + ".")
                    .collect(Collectors.joining(" "));
            end(job, claim, JobState.FAILED, null, words);
        } catch (RuntimeException e) {
            Outage outage = Outage.of(e);
            if (outage != null && outage.passes()) {
                throw e;
            }
            LOG.error("job {} of kind {} failed", job.id(), job.kind(), e);
            String words = outage == Outage.STORAGE_FULL
                    ? "There is no room left where the service keeps its files."
                    : "Something went wrong here. The service's log says what.";
            giveUp(job, claim, JobState.FAILED, words);
        }
    }

    /** The kind hears of it first: where the process ends in between, it hears it again. */
    private void giveUp(Job job, String claim, JobState state, String words) {
        JobKind<?> kind = kinds.get(job.kind());
        if (kind != null) {
            tell(kind, job, words);
        }
        end(job, claim, state, null, state == JobState.FAILED ? words : null);
    }

    private <P> void tell(JobKind<P> kind, Job job, String words) {
        kind.gaveUp(job.id(), mapper.readValue(job.parameters(), kind.parameters()), words);
    }

    private <P> JobResult result(JobKind<P> kind, Job job, JobProgress progress) {
        return kind.run(mapper.readValue(job.parameters(), kind.parameters()), progress);
    }

    private void stopped(Job job, String claim, JobStopped stopped) {
        switch (stopped.reason()) {
            case CANCELLED -> giveUp(job, claim, JobState.CANCELLED, CANCELLED);
            case PROCESS_ENDS -> throw stopped;
            case TAKEN_OVER -> LOG.info("another process has taken over job {}", job.id());
        }
    }

    private void end(Job job, String claim, JobState state, @Nullable JobResult result, @Nullable String problem) {
        if (finished(job, claim, state, result, problem)) {
            meters.counter(
                            "vanewright.jobs",
                            "kind",
                            job.kind(),
                            "outcome",
                            state.name().toLowerCase(Locale.ROOT))
                    .increment();
        }
    }

    private boolean finished(
            Job job, String claim, JobState state, @Nullable JobResult result, @Nullable String problem) {
        try (InputStream content =
                result == null || result.file() == null ? null : result.file().content()) {
            return jobs.finish(job.id(), claim, state, result, problem, clock.instant());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Writes what a run says, not too often. */
    private final class Told implements JobProgress {
        private final String id;
        private final String claim;
        private final SchedulerState process;
        private Instant next = Instant.MIN;

        Told(String id, String claim, SchedulerState process) {
            this.id = id;
            this.claim = claim;
            this.process = process;
        }

        @Override
        public void report(long done, long of, String words) {
            if (process.isShuttingDown()) {
                throw new JobStopped(JobStopped.Reason.PROCESS_ENDS);
            }
            Instant now = clock.instant();
            if (now.isBefore(next)) {
                return;
            }
            next = now.plus(TOLD_EVERY);
            if (!jobs.progress(id, claim, done, of, words, now)) {
                throw new JobStopped(
                        jobs.isCancelAsked(id) ? JobStopped.Reason.CANCELLED : JobStopped.Reason.TAKEN_OVER);
            }
        }
    }
}
