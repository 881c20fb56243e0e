package org.vanewright.engineering.template;

import java.util.Locale;

/**
 * Which record a template was made from.
 *
 * @param layoutName as people call it
 * @param revision of the layout
 * @param sha256 of the layout's canonical JSON
 * @param surfaceName such as "Wing"
 * @param mirrored whether the surface has a left and a right half; a fin has not
 */
public record TemplateLabel(String layoutName, int revision, String sha256, String surfaceName, boolean mirrored) {
    /** First twelve digits of the hash. */
    public String shortHash() {
        return sha256.substring(0, Math.min(12, sha256.length()));
    }

    String line() {
        return String.format(Locale.ROOT, "%s · revision %d · SHA-256 %s", layoutName, revision, shortHash());
    }
}
