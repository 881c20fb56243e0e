package org.vanewright.record;

import java.time.Clock;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;

/** A small document, to try repositories with. */
record Note(
        String name,
        boolean invented,
        double heightMm,
        @Nullable String remark,
        List<Integer> numbers) implements RecordContent {
    static Note of(String name, int variant) {
        return new Note(name, true, variant / 3.0, variant % 2 == 0 ? null : "“quoted” — ünïcode", List.of(variant));
    }

    /** Not a component: never written. */
    public boolean isTall() {
        return heightMm > 10;
    }

    /** Keeps notes where airframes are kept, in a database of its own. */
    static class NoteRepository extends RevisionRepository<Note> {
        NoteRepository(JdbcClient jdbc, CanonicalJson json, Clock clock) {
            super(jdbc, json, clock, "airframe_revision", Note.class);
        }
    }
}
