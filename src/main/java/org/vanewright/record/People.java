package org.vanewright.record;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Who has an account here. */
public interface People {
    /** Those who may sign in, by name. */
    List<PersonRef> members();

    /**
     * Everybody with an account by name, whether they may still sign in or not, bit by bit.
     *
     * @param after id of the last one before; null, or one who is not known, begins at the start
     */
    List<Known> byName(@Nullable String after, int most);

    /** Somebody, and whether they may sign in. */
    record Known(PersonRef person, boolean member) {}

    /** Whether that one may sign in. */
    boolean isMember(String personId);

    Optional<PersonRef> find(String personId);

    /** Those of the ids who are known, whether they may still sign in or not. */
    List<PersonRef> find(Collection<String> personIds);

    /** Whether somebody other than that person could review now. */
    boolean anotherReviewerThan(String personId);
}
