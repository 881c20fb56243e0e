package org.vanewright.campaign.log;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.flightlog.LogMapping;
import org.vanewright.engineering.flightlog.RowTally.BadRow;

/**
 * A recorded log of a draft, without its content.
 *
 * @param header names of its columns; empty for GPX
 * @param mapping what they hold; null until somebody has said
 * @param sizeBytes of the file as it was sent
 * @param readBytes of it until now
 * @param rows read until now, of which {@code badRows} were left out
 * @param firstBadRows the first of those
 * @param left events that were found beyond what is kept
 * @param problem why it could not be read
 */
public record FlightLog(
        String id,
        String draftId,
        String name,
        LogFormat format,
        LogState state,
        List<String> header,
        @Nullable LogMapping mapping,
        long sizeBytes,
        long readBytes,
        long rows,
        long badRows,
        List<BadRow> firstBadRows,
        long left,
        @Nullable String problem,
        String person,
        Instant createdAt) {
    public int percent() {
        return state == LogState.READ ? 100 : sizeBytes == 0 ? 0 : (int) Math.min(99, 100 * readBytes / sizeBytes);
    }
}
