package org.vanewright.account;

import java.util.EnumSet;
import java.util.Set;
import org.vanewright.record.Power;

/** What a person is here. */
public enum Role {
    /** Writes drafts and submits them. */
    MEMBER("Member", Power.READ_OWN, Power.SUBMIT),
    /** Reviews what others submit, too. */
    MAINTAINER("Maintainer", Power.READ_OWN, Power.SUBMIT, Power.REVIEW),
    /** Runs the instance, too. */
    STEWARD("Steward", Power.READ_OWN, Power.SUBMIT, Power.REVIEW, Power.RUN);

    private final String label;
    private final Set<Power> powers;

    Role(String label, Power first, Power... more) {
        this.label = label;
        this.powers = Set.copyOf(EnumSet.of(first, more));
    }

    public String label() {
        return label;
    }

    public Set<Power> powers() {
        return powers;
    }
}
