package org.vanewright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is said on the command line and cannot be done is refused before anything starts. */
class CommandTest {
    @TempDir
    private Path directory;

    @Test
    void wordsThatAreNoCommandAreRefused() throws IOException {
        assertThat(Vanewright.command(List.of("backup"))).isEqualTo(2);
        assertThat(Vanewright.command(List.of("back-up", "file"))).isEqualTo(2);
        assertThat(Vanewright.command(List.of("export", "one", "two"))).isEqualTo(2);
    }

    @Test
    void anExportIsNeverWrittenOverAnotherFile() throws IOException {
        Path file = Files.writeString(directory.resolve("kept.zip"), "kept");
        assertThat(Vanewright.command(List.of("export", file.toString()))).isEqualTo(1);
        assertThat(file).hasContent("kept");
    }
}
