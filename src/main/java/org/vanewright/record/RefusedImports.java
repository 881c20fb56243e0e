package org.vanewright.record;

import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** Refuses with an imported revision what came with it and builds on it, since nobody could read that any more. */
@Component
class RefusedImports {
    private static final int MOST_WAITING = 2000;
    private static final int LONGEST_CAUSE = 1500;

    private final Records records;

    RefusedImports(Records records) {
        this.records = records;
    }

    /** Whoever is refused tells of it in turn, so that what builds on that follows. */
    @EventListener
    void refused(ImportRefused event) {
        String cause = event.reason()
                .strip()
                .substring(0, Math.min(LONGEST_CAUSE, event.reason().strip().length()));
        String reason = "It builds on " + event.refused().plural() + "/"
                + RevisionRef.words(event.refused().ref()) + ", which was refused: " + cause;
        records.services().forEach(service -> refuse(service.reviews(), event.refused(), reason));
    }

    private static <T extends RecordContent> void refuse(Reviews<T> reviews, RecordUse refused, String reason) {
        reviews.waiting(MOST_WAITING).stream()
                .filter(r -> r.state() == RecordState.IMPORTED)
                .filter(r -> r.content().uses().contains(refused))
                .forEach(r -> reviews.giveBack(r.ref(), reason));
    }
}
