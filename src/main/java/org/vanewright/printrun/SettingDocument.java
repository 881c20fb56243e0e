package org.vanewright.printrun;

import org.jspecify.annotations.Nullable;

/**
 * One setting of the machine, in the person's own words.
 *
 * @param name such as "layer height"
 * @param value with its unit, such as "0.2 mm"
 */
public record SettingDocument(
        @Nullable String name, @Nullable String value) {}
