package org.vanewright.installation;

import java.time.Clock;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.vanewright.record.CanonicalJson;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRepository;

@Repository
class InstallationRepository extends RevisionRepository<InstallationDocument> {
    InstallationRepository(JdbcClient jdbc, CanonicalJson json, Clock clock) {
        super(jdbc, json, clock, "installation_revision", InstallationDocument.class);
    }

    /** The newest published installations, newest first. */
    public List<Revision<InstallationDocument>> newest(int most) {
        return newestPublished(most);
    }
}
