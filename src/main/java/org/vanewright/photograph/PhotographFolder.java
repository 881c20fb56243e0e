package org.vanewright.photograph;

import java.util.Collection;
import java.util.Set;
import org.springframework.stereotype.Component;
import org.vanewright.platform.attachment.AttachmentFolder;

/** Photographs where they lie outside the database. */
@Component
class PhotographFolder implements AttachmentFolder {
    private final PhotographRepository photographs;

    PhotographFolder(PhotographRepository photographs) {
        this.photographs = photographs;
    }

    @Override
    public String name() {
        return PhotographRepository.FOLDER;
    }

    @Override
    public Set<String> existing(Collection<String> owners) {
        return photographs.existing(owners);
    }
}
