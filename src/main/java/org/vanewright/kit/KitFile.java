package org.vanewright.kit;

import java.util.function.Supplier;

/**
 * A file in a kit.
 *
 * @param name within the folder of its record: small letters, digits, dots, hyphens
 * @param mediaType of its content, such as {@code application/pdf}
 * @param description in a few words
 * @param bytes makes the content when its turn has come
 */
public record KitFile(String name, String mediaType, String description, Supplier<byte[]> bytes) {
    static final String PDF = "application/pdf";
    static final String THREE_MF = "model/3mf";

    public KitFile {
        if (!name.matches("[a-z0-9][a-z0-9.-]{0,80}")) {
            throw new IllegalArgumentException("not a name for a file of a kit: " + name);
        }
    }
}
