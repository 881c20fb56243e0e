package org.vanewright.review;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Service;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.event.TransactionalEventListener;
import org.springframework.transaction.support.TransactionTemplate;
import org.vanewright.record.Actors;
import org.vanewright.record.Power;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordService;
import org.vanewright.record.Records;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionEvent;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.check.CheckResult;
import org.vanewright.record.check.SubmissionChecks;

/** Runs the automatic checks of what was submitted and keeps what they found. They advise; people decide. */
@Service
public class CheckRunner {
    private static final Logger LOG = LoggerFactory.getLogger(CheckRunner.class);

    private final Records records;
    private final List<SubmissionChecks<?>> checks;
    private final CheckRepository results;
    private final Actors actors;
    private final TransactionTemplate alone;
    private final Clock clock;

    CheckRunner(
            Records records,
            List<SubmissionChecks<?>> checks,
            CheckRepository results,
            Actors actors,
            PlatformTransactionManager transactions,
            Clock clock) {
        this.records = records;
        this.checks = checks;
        this.results = results;
        this.actors = actors;
        this.alone = new TransactionTemplate(transactions);
        this.alone.setPropagationBehavior(TransactionDefinition.PROPAGATION_REQUIRES_NEW);
        this.clock = clock;
    }

    /** Once a submission is there to be seen. Whatever goes wrong here, it stays submitted. */
    @TransactionalEventListener(fallbackExecution = true)
    public void submitted(RevisionEvent event) {
        if (!event.state().isWaiting()) {
            return;
        }
        try {
            records.ofKind(event.kind()).ifPresent(service -> run(service, event.ref()));
        } catch (RuntimeException e) {
            LOG.error("checks of {} {} could not be kept", event.kind(), event.ref(), e);
        }
    }

    /** Runs them again, for a reviewer. */
    public List<CheckResult> again(RecordService<?> service, RevisionRef ref) {
        actors.current().require(Power.REVIEW);
        return run(service, ref);
    }

    /** What they found when they last ran; empty where they have not. */
    List<CheckResult> found(String kind, RevisionRef ref) {
        return results.of(kind, ref);
    }

    private <T extends RecordContent> List<CheckResult> run(RecordService<T> service, RevisionRef ref) {
        Revision<T> revision = service.exactly(ref);
        T content = revision.content();
        List<CheckResult> found = new ArrayList<>();
        found.addAll(guarded(GeneralChecks.RULES, () -> List.of(GeneralChecks.rules(service.check(content)))));
        found.addAll(guarded(GeneralChecks.TEXTS, () -> List.of(GeneralChecks.texts(content))));
        found.addAll(guarded(GeneralChecks.ORIGINS, () -> List.of(GeneralChecks.origins(content))));
        for (SubmissionChecks<?> each : checks) {
            if (each.kind().equals(service.kind())) {
                @SuppressWarnings("unchecked") // the kind names the type
                SubmissionChecks<T> fitting = (SubmissionChecks<T>) each;
                found.addAll(guarded("Checks of a " + service.kind(), () -> fitting.run(revision)));
            }
        }
        alone.executeWithoutResult(status -> results.replace(service.kind(), ref, found, clock.instant()));
        return List.copyOf(found);
    }

    private static List<CheckResult> guarded(String name, Supplier<List<CheckResult>> work) {
        try {
            return work.get();
        } catch (RuntimeException e) {
            String reference = UUID.randomUUID().toString();
            LOG.error("check crashed {}", reference, e);
            return List.of(
                    CheckResult.failed(name, "This check could not be finished; in the log it is " + reference + "."));
        }
    }
}
