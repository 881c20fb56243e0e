package org.vanewright.record;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Service;

/** All kinds of records together: what one person works on, and what waits for a review. */
@Service
public class Records {
    private static final int MOST_DRAFTS = 500;
    private static final int MOST_WAITING = 200;

    private final List<RecordService<?>> services;
    private final RecordDesk desk;

    Records(List<RecordService<?>> services, RecordDesk desk) {
        this.services =
                services.stream().sorted(Comparator.comparing(s -> s.kind())).toList();
        this.desk = desk;
    }

    /** A revision with the kind of record it belongs to. */
    public record Entry<T extends RecordContent>(RecordService<T> service, Revision<T> revision) {}

    public List<RecordService<?>> services() {
        return services;
    }

    /** By its kind, such as {@code "airframe"}. */
    public Optional<RecordService<?>> ofKind(String kind) {
        return services.stream().filter(s -> s.kind().equals(kind)).findFirst();
    }

    /** By its plural, as in addresses. */
    public Optional<RecordService<?>> ofPlural(String plural) {
        return services.stream().filter(s -> s.plural().equals(plural)).findFirst();
    }

    /** What the person asking works on or has worked on, last changed first. */
    public List<DraftSummary> myDrafts() {
        return desk.drafts().of(desk.require(Power.READ_OWN).id(), MOST_DRAFTS);
    }

    /**
     * The service that a draft belongs to. Whose draft it is, the service decides.
     *
     * @throws DraftNotFoundException if there is none
     */
    public RecordService<?> ofDraft(String id) {
        desk.require(Power.READ_OWN);
        return desk.drafts().find(id).flatMap(d -> ofKind(d.kind())).orElseThrow(DraftNotFoundException::new);
    }

    /**
     * One of the person's own drafts, whatever its kind.
     *
     * @throws DraftNotFoundException if there is none, or it is somebody else's
     */
    public Draft<?> draft(String id) {
        return ofDraft(id).drafts().find(id);
    }

    /** What waits for a review, oldest first. */
    public List<Entry<?>> waiting() {
        desk.require(Power.REVIEW);
        return services.stream()
                .flatMap(s -> waiting(s).stream())
                .sorted(Comparator.comparing((Entry<?> e) -> e.revision().createdAt()))
                .toList();
    }

    /** How much waits for a review, of all kinds together. */
    public Backlog backlog() {
        return services.stream().map(s -> s.reviews().backlog()).reduce(Backlog.NONE, Backlog::plus);
    }

    private static <T extends RecordContent> List<Entry<?>> waiting(RecordService<T> service) {
        return service.reviews().waiting(MOST_WAITING).stream()
                .<Entry<?>>map(r -> new Entry<>(service, r))
                .toList();
    }
}
