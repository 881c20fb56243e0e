package org.vanewright.printrun;

import org.jspecify.annotations.Nullable;
import org.vanewright.device.PrintMaterial;

/**
 * What a run was printed with.
 *
 * @param on the day, as in ISO 8601: {@code 2026-05-17}
 * @param material class of it
 * @param machineClass such as "filament printer, heated bed, closed case"; no maker's name
 */
public record PrintingDocument(
        @Nullable String on,
        @Nullable PrintMaterial material,
        @Nullable String machineClass) {
    static final PrintingDocument NONE = new PrintingDocument(null, null, null);
}
