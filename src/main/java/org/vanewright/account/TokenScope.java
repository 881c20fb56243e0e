package org.vanewright.account;

import java.util.EnumSet;
import java.util.Set;
import org.vanewright.record.Power;

/** What a token may be used for. None lets a program run the instance. */
public enum TokenScope {
    READ("Read", "your drafts and what is yours, besides what everybody reads", Power.READ_OWN),
    SUBMIT("Submit", "write drafts and submit them, too", Power.READ_OWN, Power.SUBMIT),
    REVIEW("Review", "what others submit, too", Power.READ_OWN, Power.REVIEW);

    private final String label;
    private final String meaning;
    private final Set<Power> powers;

    TokenScope(String label, String meaning, Power first, Power... more) {
        this.label = label;
        this.meaning = meaning;
        this.powers = Set.copyOf(EnumSet.of(first, more));
    }

    public String label() {
        return label;
    }

    public String meaning() {
        return meaning;
    }

    /** Those that make sense for somebody of a role. */
    public static Set<TokenScope> of(Role role) {
        EnumSet<TokenScope> scopes = EnumSet.allOf(TokenScope.class);
        scopes.removeIf(scope -> !role.powers().containsAll(scope.powers));
        return scopes;
    }

    /** All powers of some scopes. */
    static Set<Power> powers(Set<TokenScope> scopes) {
        EnumSet<Power> powers = EnumSet.noneOf(Power.class);
        scopes.forEach(scope -> powers.addAll(scope.powers));
        return powers;
    }
}
