package org.vanewright.kit;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import org.apache.commons.compress.archivers.zip.Zip64Mode;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;

/** A ZIP archive that depends on names and bytes alone: nothing compressed, one fixed time without a zone. */
final class StoredZip implements Closeable {
    /** The first day that a ZIP archive can name, at noon, which no zone leaves out. */
    private static final LocalDateTime TIME = LocalDateTime.of(1980, 1, 1, 12, 0);

    private final ZipArchiveOutputStream zip;

    StoredZip(OutputStream out) {
        zip = new ZipArchiveOutputStream(out);
        zip.setEncoding(StandardCharsets.UTF_8.name());
        zip.setUseZip64(Zip64Mode.Never);
    }

    void add(String name, byte[] bytes) throws IOException {
        CRC32 check = new CRC32();
        check.update(bytes);
        ZipArchiveEntry entry = new ZipArchiveEntry(name);
        entry.setMethod(ZipEntry.STORED);
        entry.setSize(bytes.length);
        entry.setCrc(check.getValue());
        entry.setTimeLocal(TIME);
        zip.putArchiveEntry(entry);
        zip.write(bytes);
        zip.closeArchiveEntry();
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }
}
