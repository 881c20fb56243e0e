package org.vanewright.record;

import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Who is asking. Every service that changes something, or shows what is not public, decides by it.
 *
 * @param id of the person; null for a visitor
 * @param name as the person chose to be called
 * @param powers what this request may do; a token may carry fewer than its owner has
 */
public record Actor(@Nullable String id, String name, Set<Power> powers) {
    private static final Actor VISITOR = new Actor(null, "Visitor", Set.of());

    public Actor {
        powers = powers.isEmpty() ? Set.of() : Set.copyOf(EnumSet.copyOf(powers));
    }

    /** Somebody without an account, or not signed in. */
    public static Actor visitor() {
        return VISITOR;
    }

    public boolean signedIn() {
        return id != null;
    }

    public boolean may(Power power) {
        return powers.contains(power);
    }

    /** Whether this is that person. */
    public boolean is(@Nullable String personId) {
        return id != null && id.equals(personId);
    }

    /**
     * Lets pass who has the power.
     *
     * @return the person's id
     * @throws SignInNeededException for a visitor
     * @throws NotAllowedException for everybody else without it
     */
    public String require(Power power) {
        if (id == null) {
            throw new SignInNeededException();
        }
        if (!may(power)) {
            throw new NotAllowedException(power);
        }
        return id;
    }

    /** As {@link #require}, with the person's name. */
    public PersonRef person(Power power) {
        return new PersonRef(require(power), name);
    }
}
