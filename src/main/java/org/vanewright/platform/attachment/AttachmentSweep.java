package org.vanewright.platform.attachment;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;

/** Removes from object storage what belongs to no row: its upload was given up, or its row was removed. */
@Component
class AttachmentSweep {
    private static final Logger LOG = LoggerFactory.getLogger(AttachmentSweep.class);
    /** Whoever wrote it has written its row by then. */
    private static final Duration SETTLED = Duration.ofDays(1);

    private final Attachments attachments;
    private final List<AttachmentFolder> folders;
    private final Clock clock;

    AttachmentSweep(Attachments attachments, List<AttachmentFolder> folders, Clock clock) {
        this.attachments = attachments;
        this.folders = folders;
        this.clock = clock;
    }

    @Scheduled(initialDelay = 1, fixedDelay = 24, timeUnit = TimeUnit.HOURS)
    void sweep() {
        ObjectStorage storage = attachments.outside();
        if (storage == null) {
            return;
        }
        try {
            folders.forEach(folder -> sweep(storage, folder));
        } catch (AttachmentsAwayException e) {
            LOG.warn("what belongs to nobody stays in the object storage until tomorrow: {}", e.toString());
        }
    }

    private void sweep(ObjectStorage storage, AttachmentFolder folder) {
        Instant before = clock.instant().minus(SETTLED);
        List<String> ownerless = new ArrayList<>();
        storage.list(folder.name() + "/", some -> {
            List<String> settled = some.stream()
                    .filter(o -> o.changedAt().isBefore(before))
                    .map(ObjectStorage.Listed::key)
                    .toList();
            Set<String> there =
                    folder.existing(settled.stream().map(AttachmentSweep::owner).collect(Collectors.toSet()));
            settled.stream().filter(key -> !there.contains(owner(key))).forEach(ownerless::add);
        });
        storage.remove(ownerless);
        if (!ownerless.isEmpty()) {
            LOG.info("{} objects of {} that belonged to nobody are removed", ownerless.size(), folder.name());
        }
    }

    private static String owner(String key) {
        String[] parts = key.split("/", 3);
        return parts.length > 1 ? parts[1] : "";
    }
}
