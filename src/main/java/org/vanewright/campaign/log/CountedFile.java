package org.vanewright.campaign.log;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.function.LongConsumer;

/** Tells now and then how much has been read. */
final class CountedFile extends FilterInputStream {
    private static final long EVERY = 2_000_000;

    private final LongConsumer told;
    private long read;
    private long next = EVERY;

    CountedFile(InputStream file, LongConsumer told) {
        super(file);
        this.told = told;
    }

    @Override
    public int read() throws IOException {
        int b = super.read();
        count(b < 0 ? 0 : 1);
        return b;
    }

    @Override
    public int read(byte[] target, int offset, int length) throws IOException {
        int now = super.read(target, offset, length);
        count(Math.max(0, now));
        return now;
    }

    private void count(int bytes) {
        read += bytes;
        if (read >= next) {
            next = read + EVERY;
            told.accept(read);
        }
    }
}
