package org.vanewright.backup;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import org.apache.commons.compress.archivers.zip.Zip64Mode;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.vanewright.platform.Downloads;

/** Writes a backup: every row of every table, a page of rows in memory at a time. */
final class BackupWriter {
    private final BackupDatabaseRepository database;
    private final Clock clock;

    BackupWriter(BackupDatabaseRepository database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    /**
     * Writes one, readable by its owner only where the system knows such a thing.
     *
     * @throws BackupRefusal where the file exists, or there is nothing to keep
     */
    BackupManifest write(Path file) throws IOException {
        String schema = database.version()
                .orElseThrow(() -> new BackupRefusal(
                        "The database holds no tables of this service. Look at the settings of the database."));
        BackupRefusal.require(!Files.exists(file), file + " exists already. Nothing has been written.");
        Path part = file.resolveSibling(String.valueOf(file.getFileName()) + ".part");
        try {
            create(part);
            BackupManifest manifest = archive(part, schema);
            Files.move(part, file);
            return manifest;
        } catch (FileAlreadyExistsException e) {
            throw new BackupRefusal(part + " exists already: another backup is being written, or was broken off.");
        } catch (IOException | RuntimeException e) {
            Files.deleteIfExists(part);
            throw e;
        }
    }

    private static void create(Path part) throws IOException {
        boolean posix = FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
        FileAttribute<?>[] owned = posix
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))
                }
                : new FileAttribute<?>[0];
        Files.createFile(part, owned);
    }

    private BackupManifest archive(Path part, String schema) throws IOException {
        List<BackupManifest.Entry> entries = new ArrayList<>();
        try (ZipArchiveOutputStream zip =
                new ZipArchiveOutputStream(new BufferedOutputStream(Files.newOutputStream(part), 65_536))) {
            zip.setUseZip64(Zip64Mode.AsNeeded);
            database.atOneMoment(() -> {
                try {
                    for (TableInfo table : database.catalogue().tables()) {
                        entries.add(table(zip, table));
                    }
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            });
            BackupManifest manifest = new BackupManifest(
                    BackupManifest.FORMAT,
                    BackupManifest.VERSION,
                    schema,
                    database.engine(),
                    clock.instant().toString(),
                    entries);
            zip.putArchiveEntry(new ZipArchiveEntry(BackupManifest.NAME));
            zip.write(RowJson.manifest(manifest));
            zip.closeArchiveEntry();
            return manifest;
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private BackupManifest.Entry table(ZipArchiveOutputStream zip, TableInfo table) throws IOException {
        ZipArchiveEntry entry = new ZipArchiveEntry("tables/" + table.name() + ".jsonl");
        zip.putArchiveEntry(entry);
        MessageDigest digest = Downloads.sha256();
        Counted out = new Counted(new DigestOutputStream(zip, digest));
        database.rows().each(table, row -> {
            try {
                RowJson.write(row, out);
                out.rows++;
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
        zip.closeArchiveEntry();
        return new BackupManifest.Entry(
                table.name(),
                table.columns(),
                out.rows,
                out.bytes,
                HexFormat.of().formatHex(digest.digest()),
                table.counting());
    }

    /** Counts what is written to an archive, which stays open. */
    private static final class Counted extends OutputStream {
        private final OutputStream out;
        private long bytes;
        private long rows;

        Counted(OutputStream out) {
            this.out = out;
        }

        @Override
        public void write(int one) throws IOException {
            out.write(one);
            bytes++;
        }

        @Override
        public void write(byte[] some, int from, int count) throws IOException {
            out.write(some, from, count);
            bytes += count;
        }
    }
}
