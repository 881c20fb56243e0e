package org.vanewright.platform.files;

import jakarta.validation.constraints.NotNull;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;
import org.springframework.util.unit.DataSize;
import org.springframework.validation.annotation.Validated;

/**
 * Where generated files are kept.
 *
 * @param memory most bytes of them in memory; absent means one sixteenth of the largest heap
 * @param directory on disk, which several instances may share
 * @param disk most bytes of them there; 0 keeps nothing on disk
 */
@Validated
@ConfigurationProperties("vanewright.files")
public record FileCacheSettings(
        @Nullable DataSize memory,
        @NotNull @DefaultValue("data/files") Path directory,
        @NotNull @DefaultValue("1GB") DataSize disk) {
    private static final int SHARE_OF_HEAP = 16;

    long memoryBytes() {
        return memory == null ? Runtime.getRuntime().maxMemory() / SHARE_OF_HEAP : memory.toBytes();
    }
}
