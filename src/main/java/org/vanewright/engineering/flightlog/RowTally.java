package org.vanewright.engineering.flightlog;

import java.util.ArrayList;
import java.util.List;

/** Counts the rows of a log and remembers why the first bad ones were left out. */
public final class RowTally {
    /** So many bad rows are named; the rest are counted. */
    public static final int NAMED = 20;

    /**
     * A row that was left out.
     *
     * @param row its number in the file, the header being row 1
     * @param reason in words
     */
    public record BadRow(long row, String reason) {}

    private final List<BadRow> first = new ArrayList<>();
    private long rows;
    private long bad;

    void good() {
        rows++;
    }

    void bad(long row, String reason) {
        rows++;
        bad++;
        if (first.size() < NAMED) {
            first.add(new BadRow(row, reason));
        }
    }

    /** All rows below the header. */
    public long rows() {
        return rows;
    }

    public long bad() {
        return bad;
    }

    public List<BadRow> first() {
        return List.copyOf(first);
    }
}
