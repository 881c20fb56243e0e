package org.vanewright.kit;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.vanewright.engineering.drawing.PlainPdf;
import org.vanewright.platform.StoredZip;

/**
 * Takes the compression out of what goes into a kit. What deflate makes of the same bytes differs between builds of zlib
 * (that of the JDK, of a distribution, zlib-ng), so that only bytes without it are the same on every machine.
 */
final class PlainParts {
    private PlainParts() {}

    static byte[] of(KitFile file) {
        byte[] bytes = file.bytes().get();
        return switch (file.mediaType()) {
            case KitFile.PDF -> PlainPdf.of(bytes);
            case KitFile.THREE_MF -> stored(bytes);
            default -> bytes;
        };
    }

    /** The same archive with nothing in it compressed. */
    private static byte[] stored(byte[] archive) {
        ByteArrayOutputStream out = new ByteArrayOutputStream(archive.length * 4);
        try (ZipInputStream from = new ZipInputStream(new ByteArrayInputStream(archive), StandardCharsets.UTF_8);
                StoredZip to = new StoredZip(out)) {
            for (ZipEntry entry = from.getNextEntry(); entry != null; entry = from.getNextEntry()) {
                to.add(entry.getName(), from.readAllBytes());
            }
        } catch (IOException e) {
            throw new UncheckedIOException("memory only, so nothing outside can fail", e);
        }
        return out.toByteArray();
    }
}
