package org.vanewright.platform.job;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import org.springframework.core.io.AbstractResource;

/** A file that came of a job. One piece of it is in memory at a time, and pieces that are skipped are not read. */
final class JobFileResource extends AbstractResource {
    private final JobRepository jobs;
    private final String id;
    private final Job.FileHead file;

    JobFileResource(JobRepository jobs, String id, Job.FileHead file) {
        this.jobs = jobs;
        this.id = id;
        this.file = file;
    }

    @Override
    public InputStream getInputStream() {
        return new Pieces();
    }

    @Override
    public boolean exists() {
        return true;
    }

    @Override
    public long contentLength() {
        return file.sizeBytes();
    }

    @Override
    public String getFilename() {
        return file.name();
    }

    @Override
    public String getDescription() {
        return "the file of job " + id;
    }

    private final class Pieces extends InputStream {
        private long at;
        private int held = -1;
        private byte[] piece = new byte[0];

        @Override
        public int read() throws IOException {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
        }

        @Override
        public int read(byte[] into, int from, int most) throws IOException {
            if (at >= file.sizeBytes()) {
                return -1;
            }
            hold((int) (at / JobRepository.PIECE));
            int within = (int) (at % JobRepository.PIECE);
            int count = Math.min(most, piece.length - within);
            System.arraycopy(piece, within, into, from, count);
            at += count;
            return count;
        }

        @Override
        public long skip(long most) {
            long count = Math.max(0, Math.min(most, file.sizeBytes() - at));
            at += count;
            return count;
        }

        private void hold(int number) throws IOException {
            if (held != number) {
                piece = jobs.piece(id, number)
                        .orElseThrow(() -> new EOFException("the file of job " + id + " has been removed"));
                held = number;
            }
        }
    }
}
