package org.vanewright.record;

import java.util.Set;

/**
 * Where a revision stands. A draft can change; from its submission on a revision never does, only its state moves. What
 * is returned is corrected in its draft and submitted again as the next revision. What was imported was published
 * elsewhere; members read it until a reviewer here accepts or refuses it.
 */
public enum RecordState {
    DRAFT,
    SUBMITTED,
    RETURNED,
    IMPORTED,
    PUBLISHED,
    SUPERSEDED,
    WITHDRAWN;

    /** What it may become next; empty where it stays for ever. */
    public Set<RecordState> next() {
        return switch (this) {
            case DRAFT -> Set.of(SUBMITTED);
            case SUBMITTED -> Set.of(RETURNED, PUBLISHED);
            case IMPORTED -> Set.of(PUBLISHED, SUPERSEDED, RETURNED);
            case PUBLISHED -> Set.of(SUPERSEDED, WITHDRAWN);
            case SUPERSEDED -> Set.of(WITHDRAWN);
            case RETURNED, WITHDRAWN -> Set.of();
        };
    }

    public boolean mayBecome(RecordState state) {
        return next().contains(state);
    }

    /** Whether a reviewer has to decide on it. */
    public boolean isWaiting() {
        return this == SUBMITTED || this == IMPORTED;
    }

    /** Whether everybody may read it. Nothing that was public ever stops being so. */
    public boolean isPublic() {
        return this == PUBLISHED || this == SUPERSEDED || this == WITHDRAWN;
    }
}
