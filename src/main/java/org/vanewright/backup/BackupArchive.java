package org.vanewright.backup;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.util.Collections;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.jspecify.annotations.Nullable;
import org.vanewright.backup.BackupManifest.Entry;
import org.vanewright.platform.Downloads;
import tools.jackson.core.JacksonException;

/**
 * A backup that was opened. Everything in it is looked at before it is believed; names in it never become names of files.
 */
final class BackupArchive implements Closeable {
    private static final int LARGEST_MANIFEST = 8 << 20;

    private final ZipFile zip;
    private final BackupManifest manifest;

    /** Takes the rows of a table, one at a time. */
    @FunctionalInterface
    interface Rows {
        void row(List<@Nullable Object> values);
    }

    private BackupArchive(ZipFile zip, BackupManifest manifest) {
        this.zip = zip;
        this.manifest = manifest;
    }

    /** @throws BackupRefusal for what is no backup, or not of a form that is known */
    static BackupArchive open(Path file) throws IOException {
        ZipFile zip;
        try {
            zip = ZipFile.builder().setPath(file).get();
        } catch (IOException e) {
            throw damaged(file + " is no backup, or not a whole one", e);
        }
        try {
            return new BackupArchive(zip, manifest(zip));
        } catch (IOException | RuntimeException e) {
            zip.close();
            throw e;
        }
    }

    private static BackupManifest manifest(ZipFile zip) throws IOException {
        ZipArchiveEntry entry = zip.getEntry(BackupManifest.NAME);
        BackupRefusal.require(entry != null, "There is no " + BackupManifest.NAME + ": that is no backup.");
        byte[] json;
        try (InputStream in = zip.getInputStream(entry)) {
            json = in.readNBytes(LARGEST_MANIFEST + 1);
        }
        BackupRefusal.require(json.length <= LARGEST_MANIFEST, BackupManifest.NAME + " is too long.");
        try {
            BackupManifest manifest = RowJson.manifest(json);
            BackupRefusal.require(
                    BackupManifest.FORMAT.equals(manifest.format()), BackupManifest.NAME + " is of another kind.");
            BackupRefusal.require(
                    manifest.version() == BackupManifest.VERSION,
                    "The backup is of form " + manifest.version() + "; this version of the service reads form "
                            + BackupManifest.VERSION + ".");
            BackupRefusal.require(
                    manifest.schema().matches("[0-9]{1,6}(\\.[0-9]{1,6})*"),
                    "The backup does not say of which schema it is.");
            return manifest;
        } catch (JacksonException | NullPointerException e) {
            throw damaged(BackupManifest.NAME + " cannot be read", e);
        }
    }

    BackupManifest manifest() {
        return manifest;
    }

    /**
     * Reads everything to its end and compares it with the manifest.
     *
     * @throws BackupRefusal for the first thing that is not as it should be
     */
    void check() throws IOException {
        Set<String> named = new HashSet<>(Set.of(BackupManifest.NAME));
        for (Entry table : manifest.tables()) {
            BackupRefusal.require(
                    table.name().matches("[a-z][a-z0-9_]{0,62}") && named.add(table.file()),
                    "The manifest names the table " + table.name() + " wrongly or twice.");
        }
        Set<String> seen = new HashSet<>();
        for (ZipArchiveEntry entry : Collections.list(zip.getEntries())) {
            BackupRefusal.require(
                    named.contains(entry.getName()) && seen.add(entry.getName()),
                    "The backup holds “" + entry.getName() + "”, which its manifest does not name, or holds it twice.");
        }
        for (Entry table : manifest.tables()) {
            rows(table, row -> {});
        }
    }

    /** Gives the rows of a table, and says at the end whether they were those that the manifest names. */
    void rows(Entry table, Rows sink) throws IOException {
        ZipArchiveEntry entry = zip.getEntry(table.file());
        BackupRefusal.require(entry != null, "The backup lacks " + table.file() + ".");
        MessageDigest digest = Downloads.sha256();
        long rows = 0;
        try (InputStream in = new BufferedInputStream(
                new DigestInputStream(new Bounded(zip.getInputStream(entry), table), digest), 65_536)) {
            for (byte[] line = line(in, table); line != null; line = line(in, table)) {
                rows++;
                sink.row(RowJson.read(line, table.columns(), table.file() + ", row " + rows));
            }
        } catch (IOException e) {
            throw damaged(table.file() + " cannot be unpacked", e);
        }
        BackupRefusal.require(
                HexFormat.of().formatHex(digest.digest()).equals(table.sha256()),
                table.file() + " has not the SHA-256 of the manifest. The backup is damaged.");
        BackupRefusal.require(
                rows == table.rows(), table.file() + " has " + rows + " rows instead of " + table.rows() + ".");
    }

    private static byte @Nullable [] line(InputStream in, Entry table) throws IOException {
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        for (int one = in.read(); one >= 0; one = in.read()) {
            if (one == '\n') {
                return line.toByteArray();
            }
            line.write(one);
            BackupRefusal.require(line.size() <= RowJson.LONGEST, table.file() + " has a row that is too long.");
        }
        BackupRefusal.require(line.size() == 0, table.file() + " ends within a row. The backup is damaged.");
        return null;
    }

    private static BackupRefusal damaged(String words, Exception e) {
        BackupRefusal refusal = new BackupRefusal(words + ". The backup is damaged.");
        refusal.addSuppressed(e);
        return refusal;
    }

    /** Unpacks no further than the manifest says. */
    private static final class Bounded extends InputStream {
        private final InputStream in;
        private final Entry table;
        private long left;

        Bounded(InputStream in, Entry table) {
            this.in = in;
            this.table = table;
            this.left = table.bytes();
        }

        @Override
        public int read() throws IOException {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
        }

        @Override
        public int read(byte[] into, int from, int most) throws IOException {
            int count = in.read(into, from, most);
            left -= Math.max(0, count);
            BackupRefusal.require(
                    left >= 0, table.file() + " is longer than the manifest says. The backup is damaged.");
            return count;
        }

        @Override
        public void close() throws IOException {
            in.close();
        }
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }
}
