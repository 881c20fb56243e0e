package org.vanewright.engineering.flightlog;

import java.io.FilterReader;
import java.io.IOException;
import java.io.Reader;

/**
 * Hands on text as long as rows stay short and hold text only. The parser behind it collects a whole row in memory, so
 * that a file of one endless row would fill it.
 */
final class RowBound extends FilterReader {
    /** Longest row, in characters; what the parser reads ahead counts, too. */
    static final int MAX_ROW = 64 * 1024;

    private long sinceRow;

    RowBound(Reader source) {
        super(source);
    }

    /** Must be called after each row. */
    void rowEnded() {
        sinceRow = 0;
    }

    @Override
    public int read() throws IOException {
        char[] one = new char[1];
        return read(one, 0, 1) < 0 ? -1 : one[0];
    }

    @Override
    public int read(char[] target, int offset, int length) throws IOException {
        int count = super.read(target, offset, length);
        for (int i = offset; i < offset + count; i++) {
            char c = target[i];
            if (c < ' ' && c != '\n' && c != '\r' && c != '\t') {
                throw Refused.file("bytes that are no text", "a text file with one row for each moment");
            }
        }
        sinceRow += Math.max(count, 0);
        if (sinceRow > MAX_ROW) {
            throw Refused.file(
                    "a row of more than " + MAX_ROW / 1024 + " KiB", "rows of at most " + MAX_ROW / 1024 + " KiB");
        }
        return count;
    }
}
