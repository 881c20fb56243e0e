package org.vanewright.photograph;

/**
 * Whether a JPEG holds pixels and nothing else, as those that are written here (ITU-T T.81, 1992, annex B; from memory):
 * no comment, no metadata, nothing behind its end.
 */
final class PlainJpeg {
    private static final int SOI = 0xD8;
    private static final int EOI = 0xD9;
    private static final int SOS = 0xDA;
    private static final int JFIF = 0xE0;

    private final byte[] bytes;
    private int at;

    private PlainJpeg(byte[] bytes) {
        this.bytes = bytes;
    }

    static boolean is(byte[] bytes) {
        return new PlainJpeg(bytes).plain();
    }

    private boolean plain() {
        if (marker() != SOI) {
            return false;
        }
        for (int marker = marker(); marker != EOI; marker = marker()) {
            if (!allowed(marker) || at + 2 > bytes.length) {
                return false;
            }
            int length = unsigned(at) << 8 | unsigned(at + 1);
            if (length < 2 || marker == JFIF && !jfif(length)) {
                return false;
            }
            at += length;
            if (marker == SOS) {
                skipScan();
            }
        }
        return at == bytes.length;
    }

    /** Next marker, or 0 where there is none. */
    private int marker() {
        if (at + 2 > bytes.length || unsigned(at) != 0xFF) {
            return 0;
        }
        at += 2;
        return unsigned(at - 1);
    }

    /** Frames of baseline, extended and progressive pictures, their tables and scans. */
    private static boolean allowed(int marker) {
        return marker == JFIF
                || marker >= 0xC0 && marker <= 0xC2
                || marker == 0xC4
                || marker == 0xDB
                || marker == 0xDD
                || marker == SOS;
    }

    /** Without a thumbnail it has 16 bytes. */
    private boolean jfif(int length) {
        return length == 16 && at + 6 < bytes.length && bytes[at + 2] == 'J' && bytes[at + 5] == 'F';
    }

    private void skipScan() {
        while (at + 1 < bytes.length) {
            int next = unsigned(at + 1);
            boolean data = unsigned(at) != 0xFF || next == 0 || next >= 0xD0 && next <= 0xD7;
            if (!data) {
                return;
            }
            at++;
        }
        at = bytes.length;
    }

    private int unsigned(int index) {
        return bytes[index] & 0xFF;
    }
}
