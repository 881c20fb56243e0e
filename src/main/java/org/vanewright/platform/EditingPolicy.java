package org.vanewright.platform;

import org.springframework.stereotype.Component;

/** The one place that says whether records may be changed; every write path asks it. */
@Component
public class EditingPolicy {
    private final EditingSettings settings;

    public EditingPolicy(EditingSettings settings) {
        this.settings = settings;
    }

    public boolean isOpen() {
        return settings.openEditing();
    }

    /**
     * Lets only those pass who may change records.
     *
     * @throws EditingClosedException for everybody else
     */
    public void requireOpen() {
        if (!isOpen()) {
            throw new EditingClosedException();
        }
    }
}
