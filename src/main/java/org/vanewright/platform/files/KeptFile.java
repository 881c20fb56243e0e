package org.vanewright.platform.files;

import java.nio.charset.StandardCharsets;

/**
 * A file as it is sent. Whoever has one leaves its bytes as they are: others have the same ones.
 *
 * @param fileName proposed to the person who saves it
 * @param type media type of its content
 * @param shown true to show it in the browser where it can, false to save it
 */
public record KeptFile(String fileName, String type, boolean shown, byte[] bytes) {
    private static final int OVERHEAD = 200;

    /** Bytes it takes in memory, about. */
    int weight() {
        int names = fileName.getBytes(StandardCharsets.UTF_8).length + type.length();
        return (int) Math.min(Integer.MAX_VALUE, (long) bytes.length + names + OVERHEAD);
    }
}
