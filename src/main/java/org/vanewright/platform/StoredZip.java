package org.vanewright.platform;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import org.apache.commons.compress.archivers.zip.Zip64Mode;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;

/**
 * A ZIP archive that depends on names and bytes alone: nothing compressed, since builds of zlib differ, and one fixed time
 * without a zone. Its long form is used where its size asks for it.
 */
public final class StoredZip implements Closeable {
    /** The first day that a ZIP archive can name, at noon, which no zone leaves out. */
    private static final LocalDateTime TIME = LocalDateTime.of(1980, 1, 1, 12, 0);

    private final ZipArchiveOutputStream zip;

    public StoredZip(OutputStream out) {
        zip = new ZipArchiveOutputStream(out);
        zip.setEncoding(StandardCharsets.UTF_8.name());
        zip.setUseZip64(Zip64Mode.AsNeeded);
    }

    public void add(String name, byte[] bytes) throws IOException {
        CRC32 check = new CRC32();
        check.update(bytes);
        begin(name, bytes.length, check.getValue());
        zip.write(bytes);
        zip.closeArchiveEntry();
    }

    /** @param crc32 of the file's content, which is read once only */
    public void add(String name, Path file, long crc32) throws IOException {
        begin(name, Files.size(file), crc32);
        Files.copy(file, zip);
        zip.closeArchiveEntry();
    }

    private void begin(String name, long size, long crc32) throws IOException {
        ZipArchiveEntry entry = new ZipArchiveEntry(name);
        entry.setMethod(ZipEntry.STORED);
        entry.setSize(size);
        entry.setCrc(crc32);
        entry.setTimeLocal(TIME);
        zip.putArchiveEntry(entry);
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }
}
