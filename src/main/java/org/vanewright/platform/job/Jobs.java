package org.vanewright.platform.job;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.vanewright.record.Actor;
import org.vanewright.record.Actors;
import org.vanewright.record.Power;
import org.vanewright.record.RecordNotFoundException;
import tools.jackson.databind.json.JsonMapper;

/** Long work of whoever asks. A job is seen and cancelled by its owner and by stewards; for others it does not exist. */
@Service
@EnableConfigurationProperties(JobSettings.class)
public class Jobs {
    private final JobRepository jobs;
    private final JobQueueRepository queue;
    private final JobSettings settings;
    private final Actors actors;
    private final JsonMapper mapper;
    private final Clock clock;

    Jobs(
            JobRepository jobs,
            JobQueueRepository queue,
            JobSettings settings,
            Actors actors,
            JsonMapper mapper,
            Clock clock) {
        this.jobs = jobs;
        this.queue = queue;
        this.settings = settings;
        this.actors = actors;
        this.mapper = mapper;
        this.clock = clock;
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

    private <P> String put(JobKind<P> kind, String title, P parameters, @Nullable String owner) {
        String id = UUID.randomUUID().toString();
        jobs.add(new Job(
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
                null));
        queue.add(id);
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

    /** Content of the file that came of it. */
    public byte[] file(Job job) {
        return jobs.file(find(job.id()).id());
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
