package org.vanewright.platform.job;

import com.github.kagkarlsson.scheduler.Scheduler;
import com.github.kagkarlsson.scheduler.SchedulerName;
import com.github.kagkarlsson.scheduler.logging.LogLevel;
import com.github.kagkarlsson.scheduler.task.ExecutionComplete;
import com.github.kagkarlsson.scheduler.task.ExecutionOperations;
import com.github.kagkarlsson.scheduler.task.TaskInstance;
import com.github.kagkarlsson.scheduler.task.helper.OneTimeTask;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import java.time.Clock;
import java.time.Duration;
import java.util.function.Supplier;
import javax.sql.DataSource;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.slf4j.event.Level;
import org.springframework.context.SmartLifecycle;
import org.springframework.jdbc.datasource.TransactionAwareDataSourceProxy;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;

/**
 * The queue in the database. Each job is an execution of one task: an instance that picks it says every few seconds that
 * it is still at it, and when it falls silent another one begins again.
 */
@Component
class JobQueueRepository implements SmartLifecycle {
    private static final Logger LOG = LoggerFactory.getLogger(JobQueueRepository.class);
    private static final String TASK = "job";
    private static final int MISSED_HEARTBEATS = 6;
    private static final Duration AGAIN = Duration.ofSeconds(5);
    private static final Duration LONGEST_STOP = Duration.ofSeconds(15);

    /** Makes another one: none starts again that has been stopped. */
    private final Supplier<Scheduler> schedulers;

    private volatile Scheduler scheduler;
    private final Clock clock;
    private final boolean works;
    private volatile boolean running;

    JobQueueRepository(DataSource database, JobRunner runner, JobSettings settings, Clock clock) {
        this.clock = clock;
        this.works = settings.threads() > 0;
        OneTimeTask<Void> task = Tasks.oneTime(TASK)
                .onDeadExecutionRevive()
                .onFailure(this::again)
                .execute((instance, context) -> runner.run(instance.getId(), context.getSchedulerState()));
        this.schedulers = () -> Scheduler.create(new TransactionAwareDataSourceProxy(database), task)
                .schedulerName(new SchedulerName.Fixed(name()))
                .threads(Math.max(1, settings.threads()))
                .pollingInterval(settings.polling())
                .heartbeatInterval(settings.heartbeat())
                .missedHeartbeatsLimit(MISSED_HEARTBEATS)
                .shutdownMaxWait(LONGEST_STOP)
                .failureLogging(LogLevel.DEBUG, false)
                .build();
        this.scheduler = schedulers.get();
    }

    /** Of this process, so that whoever looks into the table sees who does what. */
    private static String name() {
        String name = ProcessHandle.current().pid() + "@" + new SchedulerName.Hostname().getName();
        return name.length() <= 50 ? name : name.substring(0, 50);
    }

    /** The process ends, or the database was away. */
    private void again(ExecutionComplete ended, ExecutionOperations<Void> operations) {
        boolean here = ended.getCause().filter(JobStopped.class::isInstance).isPresent();
        LOG.atLevel(here ? Level.INFO : Level.WARN)
                .log("job {} is begun again", ended.getExecution().taskInstance.getId());
        operations.reschedule(ended, here ? clock.instant() : clock.instant().plus(AGAIN));
    }

    /** Part of the transaction that is under way, where there is one. */
    void add(String id) {
        scheduler.schedule(new TaskInstance<>(TASK, id), clock.instant());
        if (TransactionSynchronizationManager.isSynchronizationActive()) {
            TransactionSynchronizationManager.registerSynchronization(new TransactionSynchronization() {
                @Override
                public void afterCommit() {
                    look();
                }
            });
        } else {
            look();
        }
    }

    private void look() {
        if (running) {
            scheduler.triggerCheckForDueExecutions();
        }
    }

    @Override
    public void start() {
        if (works) {
            scheduler.start();
            running = true;
        }
    }

    /** Runs notice when they next say how far they have come; nothing is interrupted before the longest wait is over. */
    @Override
    public void stop() {
        running = false;
        scheduler.stop();
        scheduler = schedulers.get();
    }

    @Override
    public boolean isRunning() {
        return running;
    }
}
