package org.vanewright.platform.files;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/** A disk with room for a few bytes more. */
final class FullDisk extends FilterOutputStream {
    private int room;

    FullDisk(OutputStream file, int room) {
        super(file);
        this.room = room;
    }

    @Override
    public void write(byte[] bytes, int offset, int length) throws IOException {
        int fits = Math.min(room, length);
        out.write(bytes, offset, fits);
        room -= fits;
        if (fits < length) {
            throw new IOException("No space left on device");
        }
    }
}
