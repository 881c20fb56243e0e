package org.vanewright.platform;

import org.springframework.stereotype.Component;
import org.vanewright.record.WritePolicy;

/** The one place that says whether records may be changed; every write path asks it. */
@Component
public class EditingPolicy implements WritePolicy {
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
    @Override
    public void requireOpen() {
        if (!isOpen()) {
            throw new EditingClosedException();
        }
    }
}
