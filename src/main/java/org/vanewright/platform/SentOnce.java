package org.vanewright.platform;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.springframework.core.io.AbstractResource;

/**
 * A file that has no name any more once it is opened, so that nothing is left whatever becomes of the response. It is
 * opened at once; where a system keeps names of open files, closing it removes the name.
 */
final class SentOnce extends AbstractResource {
    private final InputStream content;
    private final long length;

    SentOnce(Path file) throws IOException {
        this.length = Files.size(file);
        this.content = new FilterInputStream(Files.newInputStream(file, StandardOpenOption.DELETE_ON_CLOSE)) {};
        Files.deleteIfExists(file);
    }

    @Override
    public InputStream getInputStream() {
        return content;
    }

    @Override
    public boolean exists() {
        return true;
    }

    @Override
    public boolean isOpen() {
        return true;
    }

    @Override
    public long contentLength() {
        return length;
    }

    @Override
    public String getDescription() {
        return "a file that is sent once";
    }
}
