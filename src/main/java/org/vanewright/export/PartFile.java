package org.vanewright.export;

import java.io.BufferedOutputStream;
import java.io.Closeable;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.zip.CRC32;
import java.util.zip.CheckedOutputStream;
import org.vanewright.platform.Downloads;

/** A file of the export while it is written, counted and hashed on the way. */
final class PartFile implements Closeable {
    private final Path path;
    private final MessageDigest digest = Downloads.sha256();
    private final CRC32 crc32 = new CRC32();
    private final OutputStream out;

    PartFile(Path path) throws IOException {
        this.path = path;
        out = new BufferedOutputStream(
                new CheckedOutputStream(new DigestOutputStream(Files.newOutputStream(path), digest), crc32), 16_384);
    }

    void line(String text) throws IOException {
        out.write(text.getBytes(StandardCharsets.UTF_8));
        out.write('\n');
    }

    /** To write to, without closing this. */
    OutputStream stream() {
        return new FilterOutputStream(out) {
            @Override
            public void write(byte[] bytes, int from, int count) throws IOException {
                out.write(bytes, from, count);
            }

            @Override
            public void close() throws IOException {
                flush();
            }
        };
    }

    Path path() {
        return path;
    }

    /** Once it is closed. */
    String sha256() {
        return HexFormat.of().formatHex(digest.digest());
    }

    long crc32() {
        return crc32.getValue();
    }

    @Override
    public void close() throws IOException {
        out.close();
    }
}
