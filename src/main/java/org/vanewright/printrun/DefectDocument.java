package org.vanewright.printrun;

import org.jspecify.annotations.Nullable;

/**
 * How many pieces of a run had one fault.
 *
 * @param kind of fault; a piece with several counts under the worst
 * @param count of pieces
 */
public record DefectDocument(
        @Nullable DefectKind kind, @Nullable Integer count) {}
