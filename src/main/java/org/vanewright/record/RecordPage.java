package org.vanewright.record;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One page of a list.
 *
 * @param items in the list's order
 * @param nextCursor opaque; asks for the page after this one; absent on the last page
 */
public record RecordPage<T>(List<T> items, @Nullable String nextCursor) {}
