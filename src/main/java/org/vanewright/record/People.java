package org.vanewright.record;

import java.util.List;
import java.util.Optional;

/** Who has an account here. */
public interface People {
    /** Those who may sign in, by name. */
    List<PersonRef> members();

    Optional<PersonRef> find(String personId);

    /** Whether somebody other than that person could review now. */
    boolean anotherReviewerThan(String personId);
}
