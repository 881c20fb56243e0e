package org.vanewright.platform.attachment;

import java.util.Collection;
import java.util.Set;

/** What owns attachments of one folder. A feature declares it as a bean. */
public interface AttachmentFolder {
    /** First part of the keys, such as {@code photographs}. */
    String name();

    /** Those of the owners, the second part of the keys, that there are. */
    Set<String> existing(Collection<String> owners);
}
