package org.vanewright.review;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.vanewright.platform.page.Units;
import org.vanewright.record.Actors;
import org.vanewright.record.Power;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordNotFoundException;
import org.vanewright.record.RecordService;
import org.vanewright.record.RecordState;
import org.vanewright.record.Records;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/** Brings together what reviews of every kind of record need. Reviewers only. */
@Service
public class ReviewDesk {
    private final Records records;
    private final Claims claims;
    private final Remarks remarks;
    private final CheckRunner checks;
    private final Views views;
    private final Actors actors;

    ReviewDesk(Records records, Claims claims, Remarks remarks, CheckRunner checks, Views views, Actors actors) {
        this.records = records;
        this.claims = claims;
        this.remarks = remarks;
        this.checks = checks;
        this.views = views;
        this.actors = actors;
    }

    /** What waits, oldest first. */
    public List<QueueItem> queue() {
        return records.waiting().stream().map(this::item).toList();
    }

    private <T extends RecordContent> QueueItem item(Records.Entry<T> entry) {
        RecordService<T> service = entry.service();
        return new QueueItem(
                service.kind(),
                service.plural(),
                views.label(service.kind()),
                entry.revision(),
                claims.of(entry).orElse(null),
                checks.found(service.kind(), entry.revision().ref()),
                service.isOwn(entry.revision()));
    }

    /**
     * One revision by the plural of its kind, as far as the one who asks may see it.
     *
     * @throws RecordNotFoundException if there is none
     */
    public Records.Entry<?> entry(String plural, RevisionRef ref) {
        return entry(service(plural, ref), ref);
    }

    private RecordService<?> service(String plural, RevisionRef ref) {
        return records.ofPlural(plural)
                .orElseThrow(() -> new RecordNotFoundException("record", ref.slug(), ref.revision()));
    }

    private static <T extends RecordContent> Records.Entry<T> entry(RecordService<T> service, RevisionRef ref) {
        return new Records.Entry<>(service, service.exactly(ref));
    }

    /** One revision with everything a reviewer needs. */
    public Review review(String plural, RevisionRef ref, Units units) {
        actors.current().require(Power.REVIEW);
        return review(entry(plural, ref), units);
    }

    private <T extends RecordContent> Review review(Records.Entry<T> entry, Units units) {
        RecordService<T> service = entry.service();
        Revision<T> revision = entry.revision();
        RevisionRef from = revision.derivedFrom();
        Revision<T> parent = from == null ? null : service.find(from).orElse(null);
        return new Review(
                service.plural(),
                views.label(service.kind()),
                revision,
                views.compare(service, parent, revision, units),
                claims.of(entry).orElse(null),
                checks.found(service.kind(), revision.ref()),
                remarks.of(entry),
                service.isOwn(revision),
                service.reviews().mayPublish(revision),
                overtaken(service, revision));
    }

    private static <T extends RecordContent> @Nullable Revision<T> overtaken(
            RecordService<T> service, Revision<T> revision) {
        if (revision.state() != RecordState.SUBMITTED) {
            return null;
        }
        return service.latest(revision.slug())
                .filter(current -> !current.ref().equals(revision.base()))
                .orElse(null);
    }
}
