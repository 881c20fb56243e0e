package org.vanewright.campaign.log;

import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.vanewright.record.DraftDiscarded;

/** Takes the logs of a draft away with it. */
@Component
class DiscardedLogs {
    private final LogRepository logs;

    DiscardedLogs(LogRepository logs) {
        this.logs = logs;
    }

    @EventListener
    void discarded(DraftDiscarded event) {
        if (event.kind().equals("campaign")) {
            logs.removeOfDraft(event.draftId());
        }
    }
}
