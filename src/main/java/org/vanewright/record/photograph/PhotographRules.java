package org.vanewright.record.photograph;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;

/** What must hold of the photographs a document names, before they are looked up. */
public final class PhotographRules {
    /** Photographs of one document. */
    public static final int MOST = 12;

    private static final Pattern SHA_256 = Pattern.compile("[0-9a-f]{64}");

    private PhotographRules() {}

    /** Every problem, under {@code photographs}. */
    public static List<FieldProblem> check(List<PhotographUse> photographs) {
        Checks checks = new Checks();
        if (!checks.require(photographs.size() <= MOST, "photographs", photographs.size(), "at most " + MOST)) {
            return checks.problems();
        }
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < photographs.size(); i++) {
            PhotographUse use = photographs.get(i);
            Checks entry = new Checks();
            String hash = use.sha256();
            if (entry.require(
                    hash != null && SHA_256.matcher(hash).matches(), "sha256", hash, "the SHA-256 of a photograph")) {
                entry.require(hash != null && seen.add(hash), "sha256", hash, "a photograph only once");
            }
            entry.text("alt", use.alt(), 300);
            if (use.caption() != null && !use.caption().isEmpty()) {
                entry.text("caption", use.caption(), 300);
            }
            checks.addUnder("photographs[" + i + "]", entry.problems());
        }
        return checks.problems();
    }
}
