package org.vanewright.kit;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * What an archive says is in it, looked at before a library opens it (PKWARE, .ZIP File Format Specification, 6.3.10,
 * 2022, sections 4.3.7, 4.3.12, 4.3.16). Only plain archives pass: every file in one piece after the other, the directory
 * right behind them, both saying the same, and nothing else anywhere.
 */
final class ZipDirectory {
    static final long MOST_BYTES = 64L << 20;
    static final int MOST_FILES = 2000;
    static final long MOST_A_FILE = 32L << 20;
    static final long MOST_UNPACKED = 256L << 20;

    /** Text of drawings packs to a tenth or so; what packs a hundredfold is meant to burst. */
    static final int MOST_RATIO = 100;

    private static final int END_BYTES = 22;
    private static final int CENTRAL_BYTES = 46;
    private static final int LOCAL_BYTES = 30;
    private static final long MARK_64 = 0xFFFFFFFFL;
    private static final int MOST_CENTRAL = MOST_FILES * (CENTRAL_BYTES + 400);
    private static final Pattern NAME = Pattern.compile("[A-Za-z0-9_][A-Za-z0-9._-]*(/[A-Za-z0-9_][A-Za-z0-9._-]*)*");

    private final RandomAccessFile file;
    private final List<Entry> entries = new ArrayList<>();

    private ZipDirectory(RandomAccessFile file) {
        this.file = file;
    }

    /** A file as the directory has it. */
    record Entry(String name, int flags, int method, long crc, long packed, long size, long offset) {}

    /**
     * Names and sizes of the files.
     *
     * @throws org.vanewright.engineering.input.InvalidInputException with the reason for anything else than a plain archive
     */
    static List<Entry> of(Path archive) throws IOException {
        try (RandomAccessFile file = new RandomAccessFile(archive.toFile(), "r")) {
            ZipDirectory directory = new ZipDirectory(file);
            directory.read();
            return List.copyOf(directory.entries);
        }
    }

    private void read() throws IOException {
        long length = file.length();
        KitRefusal.require(length <= MOST_BYTES, length + " bytes", "at most " + (MOST_BYTES >> 20) + " MB");
        KitRefusal.require(
                length > END_BYTES && bytes(0, 4).getInt() == 0x04034b50, "another kind of file", "a ZIP archive");
        long end = length - END_BYTES;
        ByteBuffer tail = bytes(end, END_BYTES);
        KitRefusal.require(
                tail.getInt(0) == 0x06054b50 && tail.getShort(20) == 0,
                "an archive that is cut off, or has something behind its end",
                "a whole ZIP archive as it was downloaded");
        int count = Short.toUnsignedInt(tail.getShort(10));
        long size = Integer.toUnsignedLong(tail.getInt(12));
        long offset = Integer.toUnsignedLong(tail.getInt(16));
        KitRefusal.require(
                tail.getShort(4) == 0 && tail.getShort(6) == 0 && tail.getShort(8) == tail.getShort(10),
                "a part of an archive",
                "an archive in one piece");
        KitRefusal.require(count <= MOST_FILES, count + " files or more", "at most " + MOST_FILES + " files");
        KitRefusal.require(
                offset + size == end && size <= MOST_CENTRAL,
                "a directory that is not where the archive says, or in ZIP64",
                "an archive with its directory right before its end");
        central(offset, (int) size, count);
        locals(offset);
    }

    private void central(long offset, int size, int count) throws IOException {
        ByteBuffer directory = bytes(offset, size);
        Set<String> seen = new HashSet<>();
        long unpacked = 0;
        for (int i = 0; i < count; i++) {
            Entry entry = entry(directory);
            KitRefusal.require(
                    seen.add(entry.name().toLowerCase(Locale.ROOT)),
                    entry.name() + " twice",
                    "every name once, small letters or capitals alike");
            unpacked += entry.size();
            KitRefusal.require(
                    unpacked <= MOST_UNPACKED,
                    "more than " + (MOST_UNPACKED >> 20) + " MB unpacked",
                    "at most " + (MOST_UNPACKED >> 20) + " MB");
            entries.add(entry);
        }
        KitRefusal.require(
                !directory.hasRemaining(), "more files than the archive counts", "as many files as it counts");
    }

    private static Entry entry(ByteBuffer from) {
        int at = from.position();
        KitRefusal.require(
                from.remaining() >= CENTRAL_BYTES && from.getInt(at) == 0x02014b50,
                "a broken directory",
                "as many files as the archive counts");
        int nameLength = Short.toUnsignedInt(from.getShort(at + 28));
        int extraLength = Short.toUnsignedInt(from.getShort(at + 30));
        int commentLength = Short.toUnsignedInt(from.getShort(at + 32));
        int end = at + CENTRAL_BYTES + nameLength + extraLength + commentLength;
        KitRefusal.require(end <= from.limit(), "a broken directory", "whole entries");
        Entry entry = new Entry(
                name(from.array(), at + CENTRAL_BYTES, nameLength),
                Short.toUnsignedInt(from.getShort(at + 8)),
                Short.toUnsignedInt(from.getShort(at + 10)),
                Integer.toUnsignedLong(from.getInt(at + 16)),
                Integer.toUnsignedLong(from.getInt(at + 20)),
                Integer.toUnsignedLong(from.getInt(at + 24)),
                Integer.toUnsignedLong(from.getInt(at + 42)));
        int kind = from.getInt(at + 38) >>> 28;
        KitRefusal.require(kind == 0 || kind == 8, entry.name() + ", a link or something special", "plain files only");
        check(entry);
        from.position(end);
        return entry;
    }

    private static String name(byte[] bytes, int offset, int length) {
        String name = new String(bytes, offset, length, StandardCharsets.ISO_8859_1);
        boolean ok = length <= 200 && NAME.matcher(name).matches();
        KitRefusal.require(
                ok,
                "a file named “" + name + "”",
                "names of letters, digits, dots, hyphens and slashes, that stay within the archive");
        return name;
    }

    private static void check(Entry e) {
        KitRefusal.require((e.flags() & 0x2041) == 0, e.name() + ", encrypted", "files that are not encrypted");
        KitRefusal.require(
                (e.flags() & 8) == 0, e.name() + ", its size behind it", "files with their size before them");
        KitRefusal.require(
                e.method() == 0 || e.method() == 8,
                e.name() + ", packed by method " + e.method(),
                "files stored or deflated");
        KitRefusal.require(
                e.packed() != MARK_64 && e.size() != MARK_64 && e.offset() != MARK_64,
                e.name() + " in ZIP64",
                "an archive that needs no ZIP64");
        KitRefusal.require(
                e.size() <= MOST_A_FILE,
                e.name() + " of " + e.size() + " bytes",
                "at most " + (MOST_A_FILE >> 20) + " MB");
        KitRefusal.require(
                e.method() == 8 ? e.size() <= MOST_RATIO * e.packed() + 1024 : e.size() == e.packed(),
                e.name() + ", " + e.packed() + " bytes for " + e.size(),
                "files packed at most " + MOST_RATIO + "-fold");
    }

    /** Nothing may lie between files, before the first or behind the last. */
    private void locals(long directory) throws IOException {
        long next = 0;
        for (Entry e :
                entries.stream().sorted(Comparator.comparingLong(Entry::offset)).toList()) {
            KitRefusal.require(
                    e.offset() == next && next + LOCAL_BYTES <= directory,
                    e.name() + " at a place that is another's or nobody's",
                    "files one right behind the other");
            ByteBuffer local = bytes(e.offset(), LOCAL_BYTES);
            int nameLength = Short.toUnsignedInt(local.getShort(26));
            int extraLength = Short.toUnsignedInt(local.getShort(28));
            long data = e.offset() + LOCAL_BYTES + nameLength + extraLength;
            KitRefusal.require(data + e.packed() <= directory, e.name() + ", cut off", "whole files");
            String name = new String(bytes(e.offset() + LOCAL_BYTES, nameLength).array(), StandardCharsets.ISO_8859_1);
            boolean same = local.getInt(0) == 0x04034b50
                    && Short.toUnsignedInt(local.getShort(6)) == e.flags()
                    && Short.toUnsignedInt(local.getShort(8)) == e.method()
                    && Integer.toUnsignedLong(local.getInt(14)) == e.crc()
                    && Integer.toUnsignedLong(local.getInt(18)) == e.packed()
                    && Integer.toUnsignedLong(local.getInt(22)) == e.size()
                    && name.equals(e.name());
            KitRefusal.require(
                    same,
                    e.name() + ", which its own header calls something else",
                    "headers that say what the directory says");
            next = data + e.packed();
        }
        KitRefusal.require(next == directory, "something between files and directory", "nothing but files");
    }

    private ByteBuffer bytes(long at, int length) throws IOException {
        byte[] bytes = new byte[length];
        file.seek(at);
        file.readFully(bytes);
        return ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    }
}
