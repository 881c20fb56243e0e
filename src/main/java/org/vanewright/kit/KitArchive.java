package org.vanewright.kit;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.Downloads;

/**
 * A kit as it was sent, its files counted, hashed and compared with its manifest. What is to be read is in memory; the
 * rest, which is made again from it, only passed through. Archives within it are never opened.
 */
final class KitArchive {
    private static final int MOST_KEPT_A_FILE = 1_048_576;
    private static final long MOST_KEPT = 32L << 20;
    private static final Pattern KEPT = Pattern.compile("[^/]+\\.(json|txt)|records/.*\\.json|photographs/.*\\.jpg");
    private static final Pattern LINE = Pattern.compile("([0-9a-f]{64})  (\\S+)");

    private final Map<String, String> hashes = new LinkedHashMap<>();
    private final Map<String, byte[]> kept = new HashMap<>();
    private long keptBytes;

    private KitArchive() {}

    /**
     * Reads an archive to its end.
     *
     * @throws InvalidInputException with the reason for what is not a sound kit
     */
    static KitArchive read(Path archive) throws IOException {
        KitArchive read = new KitArchive();
        var directory = ZipDirectory.of(archive);
        try (ZipFile zip = ZipFile.builder()
                .setPath(archive)
                .setCharset(StandardCharsets.US_ASCII)
                .setUseUnicodeExtraFields(false)
                .get()) {
            for (ZipDirectory.Entry each : directory) {
                ZipArchiveEntry entry = zip.getEntry(each.name());
                KitRefusal.require(entry != null, each.name() + " missing", "every file of the directory");
                try (InputStream content = zip.getInputStream(entry)) {
                    read.file(each, content);
                }
            }
        } catch (InvalidInputException e) {
            throw e;
        } catch (IOException | RuntimeException e) {
            InvalidInputException refused = KitRefusal.of("an archive that cannot be unpacked", "a sound ZIP archive");
            refused.addSuppressed(e);
            throw refused;
        }
        read.compare();
        return read;
    }

    /** Reads no further than the directory says, whatever the data unpack to. */
    private void file(ZipDirectory.Entry entry, InputStream content) throws IOException {
        MessageDigest digest = Downloads.sha256();
        boolean keep = KEPT.matcher(entry.name()).matches();
        KitRefusal.require(
                !keep || entry.size() <= MOST_KEPT_A_FILE && keptBytes + entry.size() <= MOST_KEPT,
                entry.name() + " of " + entry.size() + " bytes",
                "documents and photographs of at most 1 MB each and 32 MB together");
        ByteArrayOutputStream copy = new ByteArrayOutputStream(keep ? (int) entry.size() : 0);
        byte[] buffer = new byte[8192];
        long count = 0;
        for (int n = content.read(buffer); n >= 0; n = content.read(buffer)) {
            count += n;
            KitRefusal.require(
                    count <= entry.size(), entry.name() + ", longer than it says", "files of the size they say");
            digest.update(buffer, 0, n);
            if (keep) {
                copy.write(buffer, 0, n);
            }
        }
        KitRefusal.require(
                count == entry.size(), entry.name() + ", shorter than it says", "files of the size they say");
        hashes.put(entry.name(), HexFormat.of().formatHex(digest.digest()));
        if (keep) {
            kept.put(entry.name(), copy.toByteArray());
            keptBytes += count;
        }
    }

    private void compare() {
        Map<String, String> manifest = manifest();
        manifest.forEach((name, sha256) -> {
            String found = hashes.get(name);
            KitRefusal.require(found != null, name + " missing", "every file that the manifest names");
            KitRefusal.require(
                    sha256.equals(found), name + " with SHA-256 " + found, "SHA-256 " + sha256 + " as in the manifest");
        });
        for (String name : hashes.keySet()) {
            KitRefusal.require(
                    name.equals(CrateDocument.MANIFEST) || manifest.containsKey(name),
                    name + ", which the manifest does not name",
                    "the files of the manifest and no other");
        }
    }

    private Map<String, String> manifest() {
        Map<String, String> lines = new HashMap<>();
        for (String line : text(CrateDocument.MANIFEST).split("\n", -1)) {
            if (line.isEmpty()) {
                continue;
            }
            Matcher matcher = LINE.matcher(line);
            KitRefusal.require(
                    matcher.matches() && lines.put(matcher.group(2), matcher.group(1)) == null,
                    "“" + line + "” in " + CrateDocument.MANIFEST,
                    "a line for each file: its SHA-256, two spaces, its name");
        }
        return lines;
    }

    Set<String> names() {
        return hashes.keySet();
    }

    /** SHA-256 of a file, or empty text where there is none. */
    String sha256(String name) {
        return hashes.getOrDefault(name, "");
    }

    byte[] bytes(String name) {
        byte[] bytes = kept.get(name);
        if (bytes == null) {
            throw KitRefusal.of(name + " missing", "a kit as this service makes it, not another archive");
        }
        return bytes;
    }

    String text(String name) {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes(name)))
                    .toString();
        } catch (CharacterCodingException e) {
            throw KitRefusal.of(name + ", which is no UTF-8", "text in UTF-8");
        }
    }
}
