package org.vanewright.record;

import java.time.Clock;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.vanewright.testing.Databases;
import org.vanewright.testing.RepositoryContract;

class PostgresRevisionRepositoryTest extends RepositoryContract<Note> {
    PostgresRevisionRepositoryTest() {
        super(Databases.Engine.POSTGRESQL, "airframe_revision");
    }

    @Override
    protected RevisionRepository<Note> create(JdbcClient jdbc, CanonicalJson json, Clock clock) {
        return new Note.NoteRepository(jdbc, json, clock);
    }

    @Override
    protected Note content(String name, int variant) {
        return Note.of(name, variant);
    }
}
