package org.vanewright.photograph;

import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.vanewright.record.Records;
import org.vanewright.record.RevisionEvent;

/** Shows the photographs of a record to everybody once it is published. */
@Component
class PublishedPhotographs {
    private final Records records;
    private final Photographs photographs;

    PublishedPhotographs(Records records, Photographs photographs) {
        this.records = records;
        this.photographs = photographs;
    }

    @EventListener
    void moved(RevisionEvent event) {
        if (event.state().isPublic()) {
            records.ofKind(event.kind())
                    .flatMap(service -> service.find(event.ref()))
                    .ifPresent(revision -> photographs.makePublic(
                            Photographs.hashes(revision.content().photographs())));
        }
    }
}
