package org.vanewright.campaign.log;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.SequenceInputStream;
import java.io.UncheckedIOException;
import java.util.Enumeration;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;

/** A file packed (RFC 1952) and cut into pieces, of which one is in memory at a time. */
final class LogPieces {
    /** H2 holds 1 048 576 bytes in a column of bytes. */
    private static final int PIECE = 900_000;

    private LogPieces() {}

    /** @return bytes of the file; more than the limit are refused */
    static long write(InputStream file, long most, LogRepository.PartSink parts) {
        try (Cutter cutter = new Cutter(parts);
                OutputStream packed = new GZIPOutputStream(cutter, 64 * 1024)) {
            byte[] buffer = new byte[64 * 1024];
            long size = 0;
            for (int now = file.read(buffer); now >= 0; now = file.read(buffer)) {
                size += now;
                if (size > most) {
                    throw new InvalidInputException(new FieldProblem(
                            "file", "more than " + most / 1_000_000 + " MB", "at most " + most / 1_000_000 + " MB"));
                }
                packed.write(buffer, 0, now);
            }
            return size;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The file again. */
    static InputStream read(String id, LogRepository logs) throws IOException {
        return new GZIPInputStream(new SequenceInputStream(new Pieces(id, logs)), 64 * 1024);
    }

    private static final class Cutter extends OutputStream {
        private final LogRepository.PartSink parts;
        private final byte[] piece = new byte[PIECE];
        private int filled;

        Cutter(LogRepository.PartSink parts) {
            this.parts = parts;
        }

        @Override
        public void write(int b) {
            write(new byte[] {(byte) b}, 0, 1);
        }

        @Override
        public void write(byte[] source, int offset, int length) {
            for (int done = 0; done < length; ) {
                int now = Math.min(length - done, PIECE - filled);
                System.arraycopy(source, offset + done, piece, filled, now);
                filled += now;
                done += now;
                if (filled == PIECE) {
                    handOn();
                }
            }
        }

        private void handOn() {
            parts.add(java.util.Arrays.copyOf(piece, filled));
            filled = 0;
        }

        @Override
        public void close() {
            if (filled > 0) {
                handOn();
            }
        }
    }

    private static final class Pieces implements Enumeration<InputStream> {
        private final String id;
        private final LogRepository logs;
        private int number;
        private Optional<byte[]> next;

        Pieces(String id, LogRepository logs) {
            this.id = id;
            this.logs = logs;
            this.next = logs.part(id, 0);
        }

        @Override
        public boolean hasMoreElements() {
            return next.isPresent();
        }

        @Override
        public InputStream nextElement() {
            byte[] piece = next.orElseThrow(NoSuchElementException::new);
            next = logs.part(id, ++number);
            return new java.io.ByteArrayInputStream(piece);
        }
    }
}
