package org.vanewright.platform.job;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.core.io.Resource;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Service;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.support.TransactionTemplate;
import org.vanewright.record.Actor;
import org.vanewright.record.Actors;
import org.vanewright.record.Power;
import org.vanewright.record.RecordNotFoundException;
import tools.jackson.databind.json.JsonMapper;

/** Long work of whoever asks. A job is seen and cancelled by its owner and by stewards; for others it does not exist. */
@Service
@EnableConfigurationProperties(JobSettings.class)
public class Jobs {
    private static final Logger LOG = LoggerFactory.getLogger(Jobs.class);

    private final JobRepository jobs;
    private final JobQueueRepository queue;
    private final JobSettings settings;
    private final Actors actors;
    private final JsonMapper mapper;
    private final Clock clock;
    private final TransactionTemplate transactions;

    Jobs(
            JobRepository jobs,
            JobQueueRepository queue,
            JobSettings settings,
            Actors actors,
            JsonMapper mapper,
            Clock clock,
            PlatformTransactionManager transactions) {
        this.jobs = jobs;
        this.queue = queue;
        this.settings = settings;
        this.actors = actors;
        this.mapper = mapper;
        this.clock = clock;
        this.transactions = new TransactionTemplate(transactions);
    }

    /**
     * Puts work of the one who asks into the queue, in the transaction that is under way where there is one: what else it
     * writes is kept with the job, or neither is. How far it has come is shown at {@code /jobs/<id>}.
     *
     * @param title what it is, for whoever asks, at most 200 characters
     * @param parameters written as JSON
     * @return id of the job
     */
    @Transactional
    public <P> String start(JobKind<P> kind, String title, P parameters) {
        return put(kind, title, parameters, actors.current().require(Power.SUBMIT));
    }

    /** As {@link #start} for work that nobody asked for, which stewards alone see. */
    @Transactional
    public <P> String startUnasked(JobKind<P> kind, String title, P parameters) {
        return put(kind, title, parameters, null);
    }

    /**
     * Starts work for everybody, whoever asks, unless one of its kind is under way: there is one at a time, on all
     * instances together. What earlier ones left is removed, but the last that was done.
     *
     * @return the one that is under way now
     */
    public <P> Job startForAll(JobKind<P> kind, String title, P parameters) {
        for (Optional<Job> there = jobs.inSlot(kind.name()); ; there = jobs.inSlot(kind.name())) {
            if (there.isPresent()) {
                return there.get();
            }
            try {
                return Objects.requireNonNull(transactions.execute(status -> {
                    lastDone(kind).ifPresent(last -> jobs.removeFinishedBut(kind.name(), last.id()));
                    String id = put(kind, title, parameters, null, kind.name());
                    queue.add(id);
                    return jobs.find(id).orElseThrow();
                }));
            } catch (DuplicateKeyException e) {
                LOG.debug("somebody else was first to start {}", kind.name());
            }
        }
    }

    /** The work of a kind for everybody that is under way. */
    public Optional<Job> underWay(JobKind<?> kind) {
        return jobs.inSlot(kind.name());
    }

    /** The last work of a kind that was done; what came of it is for whoever has the kind to show. */
    public Optional<Job> lastDone(JobKind<?> kind) {
        return jobs.last(kind.name(), JobState.DONE);
    }

    /** The last work of a kind that could not be done. */
    public Optional<Job> lastFailed(JobKind<?> kind) {
        return jobs.last(kind.name(), JobState.FAILED);
    }

    private <P> String put(JobKind<P> kind, String title, P parameters, @Nullable String owner) {
        String id = put(kind, title, parameters, owner, null);
        queue.add(id);
        return id;
    }

    private <P> String put(JobKind<P> kind, String title, P parameters, @Nullable String owner, @Nullable String slot) {
        String id = UUID.randomUUID().toString();
        Job job = new Job(
                id,
                kind.name(),
                title.length() <= 200 ? title : title.substring(0, 200),
                mapper.writeValueAsString(parameters),
                owner,
                JobState.WAITING,
                0,
                0,
                0,
                null,
                null,
                null,
                null,
                now(),
                null);
        jobs.add(job, slot);
        return id;
    }

    /** @throws RecordNotFoundException where there is none, or it is somebody else's */
    public Job find(String id) {
        Actor actor = actors.current();
        actor.require(Power.READ_OWN);
        return jobs.find(id)
                .filter(job -> actor.is(job.ownerId()) || actor.may(Power.RUN))
                .orElseThrow(() -> new RecordNotFoundException("job", id, null));
    }

    /**
     * The file that came of a job that the one who asks was given.
     *
     * @throws RecordNotFoundException where there is none
     */
    public Resource file(Job job) {
        if (job.file() == null) {
            throw new RecordNotFoundException("file of job", job.id(), null);
        }
        return new JobFileResource(jobs, job.id(), job.file());
    }

    /** Asks it to stop, which it does shortly; one that is finished stays as it is. */
    public void cancel(String id) {
        actors.current().require(Power.SUBMIT);
        jobs.cancel(find(id).id(), now());
    }

    /** Stops, without asking who, what is of no use any more. */
    public void abandon(String id) {
        jobs.cancel(id, now());
    }

    @Scheduled(initialDelay = 5, fixedDelay = 60, timeUnit = TimeUnit.MINUTES)
    void forgetOldOnes() {
        jobs.removeFinishedBefore(now().minus(settings.kept()));
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }
}
