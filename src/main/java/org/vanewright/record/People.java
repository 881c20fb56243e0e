package org.vanewright.record;

import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** Who has an account here. */
public interface People {
    /** Those who may sign in, by name. */
    List<PersonRef> members();

    Optional<PersonRef> find(String personId);

    /** Those of the ids who are known, whether they may still sign in or not. */
    List<PersonRef> find(Collection<String> personIds);

    /** Whether somebody other than that person could review now. */
    boolean anotherReviewerThan(String personId);
}
