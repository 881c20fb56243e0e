package org.vanewright.platform.files;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.Optional;

/** A kept file as it lies on disk: its key, its head, its content, and the SHA-256 of all that at the end. */
final class FileBytes {
    private static final int MAGIC = 0x56574631;
    private static final int DIGEST = 32;

    private FileBytes() {}

    static byte[] write(String key, KeptFile file) {
        try {
            ByteArrayOutputStream all = new ByteArrayOutputStream(file.bytes().length + 512);
            DataOutputStream out = new DataOutputStream(all);
            out.writeInt(MAGIC);
            out.writeUTF(key);
            out.writeUTF(file.fileName());
            out.writeUTF(file.type());
            out.writeBoolean(file.shown());
            out.writeInt(file.bytes().length);
            out.write(file.bytes());
            out.write(digest(all.toByteArray(), all.size()));
            return all.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Nothing where a byte is missing or differs from what was written. */
    static Optional<KeptFile> read(String key, byte[] stored) {
        int body = stored.length - DIGEST;
        if (body < 0 || !Arrays.equals(digest(stored, body), Arrays.copyOfRange(stored, body, stored.length))) {
            return Optional.empty();
        }
        try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(stored, 0, body))) {
            if (in.readInt() != MAGIC || !in.readUTF().equals(key)) {
                return Optional.empty();
            }
            String name = in.readUTF();
            String type = in.readUTF();
            boolean shown = in.readBoolean();
            int length = in.readInt();
            byte[] bytes = in.readAllBytes();
            return bytes.length == length ? Optional.of(new KeptFile(name, type, shown, bytes)) : Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private static byte[] digest(byte[] bytes, int length) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            digest.update(bytes, 0, length);
            return digest.digest();
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
