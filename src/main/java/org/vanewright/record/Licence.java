package org.vanewright.record;

import java.util.List;
import java.util.Set;

/**
 * Under which licence a contribution may be used, chosen when it is submitted.
 *
 * <p>What a work made from another may carry follows the deeds of Creative Commons: attribution must be kept, and
 * ShareAlike asks for the same licence.
 */
public enum Licence {
    CC_BY_4_0(
            "CC BY 4.0",
            "CC-BY-4.0",
            "https://creativecommons.org/licenses/by/4.0/",
            "Others may use and change it, and name you."),
    CC_BY_SA_4_0(
            "CC BY-SA 4.0",
            "CC-BY-SA-4.0",
            "https://creativecommons.org/licenses/by-sa/4.0/",
            "As CC BY, and what is made from it carries this licence, too."),
    CC0_1_0(
            "CC0 1.0",
            "CC0-1.0",
            "https://creativecommons.org/publicdomain/zero/1.0/",
            "Others may do anything with it, without naming you.");

    private final String label;
    private final String spdx;
    private final String url;
    private final String meaning;

    Licence(String label, String spdx, String url, String meaning) {
        this.label = label;
        this.spdx = spdx;
        this.url = url;
        this.meaning = meaning;
    }

    public String label() {
        return label;
    }

    /** Its identifier in the SPDX License List. */
    public String spdx() {
        return spdx;
    }

    public String url() {
        return url;
    }

    /** In one sentence. */
    public String meaning() {
        return meaning;
    }

    /** What somebody else's work made from one under this licence may carry. */
    public Set<Licence> derivatives() {
        return switch (this) {
            case CC_BY_4_0 -> Set.of(CC_BY_4_0, CC_BY_SA_4_0);
            case CC_BY_SA_4_0 -> Set.of(CC_BY_SA_4_0);
            case CC0_1_0 -> Set.copyOf(List.of(values()));
        };
    }
}
