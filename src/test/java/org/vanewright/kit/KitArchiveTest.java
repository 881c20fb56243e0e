package org.vanewright.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.Downloads;
import org.vanewright.platform.StoredZip;

/** Archives that mean harm, each refused with its reason before anything of it is used. */
class KitArchiveTest {
    @TempDir
    private Path directory;

    @Test
    void aSoundArchiveIsReadAndArchivesWithinItAreNotOpened() throws IOException {
        byte[] inner = deflated("bomb.txt", new byte[20_000_000]);
        KitArchive read = KitArchive.read(file(sealed("a.txt", "text", "nested/inner.zip", inner)));
        assertThat(read.names()).containsExactly("a.txt", "nested/inner.zip", "manifest-sha256.txt");
        assertThat(read.text("a.txt")).isEqualTo("text");
        assertThat(read.sha256("nested/inner.zip")).isEqualTo(Downloads.sha256(inner));
    }

    @Test
    void whatWasPackedAgainByAnotherProgramIsReadToo() throws IOException {
        byte[] text = "line\n".repeat(10).getBytes(StandardCharsets.UTF_8);
        byte[] manifest = (Downloads.sha256(text) + "  a.txt\n").getBytes(StandardCharsets.UTF_8);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipArchiveOutputStream zip = new ZipArchiveOutputStream(Files.newByteChannel(
                directory.resolve("packed.zip"),
                java.util.EnumSet.of(
                        java.nio.file.StandardOpenOption.CREATE, java.nio.file.StandardOpenOption.WRITE)))) {
            for (byte[] each : new byte[][] {text, manifest}) {
                zip.putArchiveEntry(new ZipArchiveEntry(each == text ? "a.txt" : "manifest-sha256.txt"));
                zip.write(each);
                zip.closeArchiveEntry();
            }
        }
        assertThat(out.size()).isZero();
        assertThat(KitArchive.read(directory.resolve("packed.zip")).text("a.txt"))
                .startsWith("line\nline");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "PK", "no archive at all, only some text that somebody called kit.zip"})
    void otherFilesAreNoArchives(String content) throws IOException {
        assertThat(refusal(content.getBytes(StandardCharsets.UTF_8))).contains("another kind of file");
    }

    @Test
    void whatIsCutOffOrHasSomethingBehindItIsRefused() throws IOException {
        byte[] sound = sealed("a.txt", "text");
        assertThat(refusal(Arrays.copyOf(sound, sound.length - 10))).contains("cut off");
        assertThat(refusal(Arrays.copyOf(sound, sound.length / 2))).contains("cut off");
        assertThat(refusal(Arrays.copyOf(sound, sound.length + 30))).contains("something behind its end");
        byte[] shifted = new byte[sound.length + 4];
        System.arraycopy(sound, 0, shifted, 4, sound.length);
        System.arraycopy(sound, 0, shifted, 0, 4);
        assertThat(refusal(shifted)).contains("a directory that is not where the archive says");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../a.txt",
                "a/../../b.txt",
                "/etc/a.txt",
                "C:a.txt",
                "a/./b",
                "a//b",
                "folder/",
                ".hidden",
                "a b.txt",
                "a\u0001b",
                "__MACOSX/._a"
            })
    void namesThatLeaveTheArchiveOrAreNoneAreRefused(String name) throws IOException {
        assertThat(refusal(sealed(name, "text"))).contains("a file named", "that stay within the archive");
    }

    @Test
    void backslashesAreRefused() throws IOException {
        byte[] zip = replaced(sealed("aXb.txt", "text"), "aXb.txt", "a\\b.txt");
        assertThat(refusal(zip)).contains("a file named “a\\b.txt”");
    }

    @Test
    void theSameNameTwiceIsRefusedWhateverItsLetters() throws IOException {
        assertThat(refusal(zip("a.txt", "1", "a.txt", "2"))).contains("a.txt twice");
        assertThat(refusal(zip("a.txt", "1", "A.TXT", "2"))).contains("A.TXT twice");
    }

    @Test
    void linksAreRefused() throws IOException {
        ZipArchiveEntry link = new ZipArchiveEntry("link");
        link.setUnixMode(0120777);
        assertThat(refusal(one(link, "/etc/passwd".getBytes(StandardCharsets.UTF_8))))
                .contains("a link");
    }

    @Test
    void bombsAreRefusedBeforeTheyAreUnpacked() throws IOException {
        assertThat(refusal(deflated("zeros.txt", new byte[30_000_000]))).contains("packed at most 100-fold");
        byte[] large = deflated("a.txt", new byte[100]);
        assertThat(refusal(patched(large, 24, 18 + 4, 33 << 20))).contains("at most 32 MB");
    }

    @Test
    void manyLargeFilesTogetherAreRefused() throws IOException {
        byte[] noise = new byte[340_000];
        new Random(7).nextBytes(noise);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipArchiveOutputStream zip = new ZipArchiveOutputStream(out)) {
            for (int i = 0; i < 9; i++) {
                ZipArchiveEntry entry = stored("big-" + i, noise);
                zip.putArchiveEntry(entry);
                zip.write(noise);
                zip.closeArchiveEntry();
            }
        }
        // each claims to be deflated, from 32 MB
        byte[] lying = out.toByteArray();
        for (int at = 0; at + 4 < lying.length; at++) {
            if (at(lying, at) == 0x02014b50) {
                put(lying, at + 10, 8, 2);
                put(lying, at + 24, 32 << 20, 4);
            }
        }
        assertThat(refusal(lying)).contains("more than 256 MB unpacked");
    }

    @Test
    void dataThatUnpackToAnotherSizeThanTheySayAreRefused() throws IOException {
        byte[] packed = deflated("a.txt", "0123456789".repeat(20).getBytes(StandardCharsets.UTF_8));
        assertThat(refusal(patched(packed, 24, 22, 100))).contains("longer than it says");
        assertThat(refusal(patched(packed, 24, 22, 300))).contains("shorter than it says");
    }

    @Test
    void aHundredThousandFilesAreRefusedWithoutLookingAtThem() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipArchiveOutputStream zip = new ZipArchiveOutputStream(out)) {
            for (int i = 0; i < 100_000; i++) {
                zip.putArchiveEntry(stored("f" + i, new byte[0]));
                zip.closeArchiveEntry();
            }
        }
        byte[] many = out.toByteArray();
        assertThat(refusal(many)).contains("65535 files or more", "at most 2000 files");
        put(many, many.length - 22 + 8, 5, 2);
        put(many, many.length - 22 + 10, 5, 2);
        assertThat(refusal(many)).contains("a directory that is not where the archive says, or in ZIP64");
    }

    @Test
    void encryptedFilesAreRefused() throws IOException {
        assertThat(refusal(patched(sealed("a.txt", "text"), 8, 6, 1))).contains("encrypted");
    }

    @Test
    void liesAboutSixtyFourBitsAreRefused() throws IOException {
        byte[] zip = patched(deflated("a.txt", "text".getBytes(StandardCharsets.UTF_8)), 24, 22, -1);
        assertThat(refusal(zip)).contains("ZIP64");
    }

    @Test
    void aFileThatItsOwnHeaderCallsSomethingElseIsRefused() throws IOException {
        byte[] zip = sealed("abc.txt", "text");
        zip[30] = 'x';
        assertThat(refusal(zip)).contains("abc.txt, which its own header calls something else");
    }

    @Test
    void filesThatLieOverEachOtherAreRefused() throws IOException {
        byte[] zip = zip("a.txt", "same", "b.txt", "same");
        int second = lastCentral(zip);
        put(zip, second + 42, 0, 4);
        assertThat(refusal(zip)).contains("at a place that is another's or nobody's");
    }

    @Test
    void moreAndFewerFilesThanCountedAreRefused() throws IOException {
        byte[] zip = zip("a.txt", "1", "b.txt", "2");
        put(zip, zip.length - 22 + 8, 1, 2);
        put(zip, zip.length - 22 + 10, 1, 2);
        assertThat(refusal(zip)).contains("more files than the archive counts");
        put(zip, zip.length - 22 + 8, 3, 2);
        put(zip, zip.length - 22 + 10, 3, 2);
        assertThat(refusal(zip)).contains("a broken directory");
    }

    @Test
    void theManifestIsHeld() throws IOException {
        String sound = Downloads.sha256("text".getBytes(StandardCharsets.UTF_8)) + "  a.txt\n";
        assertThat(refusal(zip("a.txt", "text"))).contains("manifest-sha256.txt missing");
        assertThat(refusal(zip("a.txt", "changed", "manifest-sha256.txt", sound)))
                .contains("a.txt with SHA-256", "as in the manifest");
        assertThat(refusal(zip("manifest-sha256.txt", sound))).contains("a.txt missing");
        assertThat(refusal(zip("a.txt", "text", "b.txt", "more", "manifest-sha256.txt", sound)))
                .contains("b.txt, which the manifest does not name");
        assertThat(refusal(zip("a.txt", "text", "manifest-sha256.txt", sound + sound)))
                .contains("a line for each file");
        assertThat(refusal(zip("a.txt", "text", "manifest-sha256.txt", "not a hash  a.txt\n")))
                .contains("a line for each file");
        assertThat(refusal(replaced(zip("a.txt", "text", "manifest-sha256.txt", sound + "#"), "\n#", "\n\u00ff")))
                .contains("manifest-sha256.txt, which is no UTF-8");
    }

    private String refusal(byte[] zip) throws IOException {
        Path file = file(zip);
        InvalidInputException refused = catchThrowableOfType(InvalidInputException.class, () -> KitArchive.read(file));
        assertThat(refused).isNotNull();
        assertThat(refused.problems()).hasSize(1).allMatch(p -> p.field().equals("file"));
        return refused.problems().get(0).value() + ": "
                + refused.problems().get(0).allowed();
    }

    private Path file(byte[] zip) throws IOException {
        return Files.write(Files.createTempFile(directory, "kit", ".zip"), zip);
    }

    /** With its manifest: names and contents in turn. */
    private static byte[] sealed(Object... files) throws IOException {
        StringBuilder manifest = new StringBuilder();
        for (int i = 0; i < files.length; i += 2) {
            manifest.append(Downloads.sha256(bytes(files[i + 1])))
                    .append("  ")
                    .append(files[i])
                    .append('\n');
        }
        Object[] all = Arrays.copyOf(files, files.length + 2);
        all[files.length] = "manifest-sha256.txt";
        all[files.length + 1] = manifest.toString();
        return zip(all);
    }

    private static byte[] zip(Object... files) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (StoredZip zip = new StoredZip(out)) {
            for (int i = 0; i < files.length; i += 2) {
                zip.add((String) files[i], bytes(files[i + 1]));
            }
        }
        return out.toByteArray();
    }

    private static byte[] bytes(Object content) {
        return content instanceof byte[] bytes ? bytes : ((String) content).getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] deflated(String name, byte[] content) throws IOException {
        java.util.zip.Deflater deflater = new java.util.zip.Deflater(9, true);
        deflater.setInput(content);
        deflater.finish();
        byte[] packed = new byte[content.length + 100];
        int length = deflater.deflate(packed);
        deflater.end();
        ZipArchiveEntry entry = new ZipArchiveEntry(name);
        entry.setMethod(ZipEntry.DEFLATED);
        entry.setSize(content.length);
        entry.setCompressedSize(length);
        CRC32 check = new CRC32();
        check.update(content);
        entry.setCrc(check.getValue());
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipArchiveOutputStream zip = new ZipArchiveOutputStream(out)) {
            zip.addRawArchiveEntry(entry, new java.io.ByteArrayInputStream(packed, 0, length));
        }
        return out.toByteArray();
    }

    private static ZipArchiveEntry stored(String name, byte[] content) {
        ZipArchiveEntry entry = new ZipArchiveEntry(name);
        describe(entry, content);
        return entry;
    }

    private static void describe(ZipArchiveEntry entry, byte[] content) {
        CRC32 check = new CRC32();
        check.update(content);
        entry.setMethod(ZipEntry.STORED);
        entry.setSize(content.length);
        entry.setCrc(check.getValue());
        entry.setTime(0);
    }

    private static byte[] one(ZipArchiveEntry entry, byte[] content) throws IOException {
        describe(entry, content);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipArchiveOutputStream zip = new ZipArchiveOutputStream(out)) {
            zip.putArchiveEntry(entry);
            zip.write(content);
            zip.closeArchiveEntry();
        }
        return out.toByteArray();
    }

    /** The first file says so in the directory and in its own header. */
    private static byte[] patched(byte[] zip, int inDirectory, int inHeader, int value) {
        byte[] changed = zip.clone();
        int width = inDirectory == 8 ? 2 : 4;
        put(changed, firstCentral(changed) + inDirectory, value, width);
        put(changed, inHeader, value, width);
        return changed;
    }

    private static int firstCentral(byte[] zip) {
        for (int i = 0; i + 4 < zip.length; i++) {
            if (at(zip, i) == 0x02014b50) {
                return i;
            }
        }
        throw new AssertionError("no directory");
    }

    private static int lastCentral(byte[] zip) {
        for (int i = zip.length - 4; i >= 0; i--) {
            if (at(zip, i) == 0x02014b50) {
                return i;
            }
        }
        throw new AssertionError("no directory");
    }

    private static int at(byte[] zip, int i) {
        return zip[i] & 0xFF | (zip[i + 1] & 0xFF) << 8 | (zip[i + 2] & 0xFF) << 16 | (zip[i + 3] & 0xFF) << 24;
    }

    private static void put(byte[] zip, int at, int value, int width) {
        for (int i = 0; i < width; i++) {
            zip[at + i] = (byte) (value >>> 8 * i);
        }
    }

    private static byte[] replaced(byte[] zip, String from, String to) {
        String text = new String(zip, StandardCharsets.ISO_8859_1);
        return text.replace(from, to).getBytes(StandardCharsets.ISO_8859_1);
    }
}
