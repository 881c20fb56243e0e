package org.vanewright.campaign.log;

import java.util.Collection;
import java.util.Set;
import org.springframework.stereotype.Component;
import org.vanewright.platform.attachment.AttachmentFolder;

/** Recorded logs where they lie outside the database. */
@Component
class LogFolder implements AttachmentFolder {
    private final LogRepository logs;

    LogFolder(LogRepository logs) {
        this.logs = logs;
    }

    @Override
    public String name() {
        return LogRepository.FOLDER;
    }

    @Override
    public Set<String> existing(Collection<String> owners) {
        return logs.existing(owners);
    }
}
