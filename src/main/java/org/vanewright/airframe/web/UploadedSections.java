package org.vanewright.airframe.web;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.multipart.MultipartHttpServletRequest;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.platform.form.Form;

/** Puts the text of uploaded coordinate files into the form, where it stays whatever else is wrong. */
final class UploadedSections {
    private static final String SUFFIX = ".file";
    private static final int MAX_BYTES = 64 * 1024;

    private UploadedSections() {}

    static void take(HttpServletRequest request, Form form) {
        if (request instanceof MultipartHttpServletRequest multipart) {
            multipart.getFileMap().forEach((field, file) -> {
                if (field.endsWith(SUFFIX) && !file.isEmpty()) {
                    take(form, field.substring(0, field.length() - SUFFIX.length()), file);
                }
            });
        }
    }

    private static void take(Form form, String section, MultipartFile file) {
        form.put(section + ".kind", SectionFields.COORDINATES);
        if (file.getSize() > MAX_BYTES) {
            form.refuse(
                    new FieldProblem(section + ".coordinates", file.getSize() + " bytes", "a file of at most 64 KiB"));
            return;
        }
        try {
            form.put(section + ".coordinates", new String(file.getBytes(), StandardCharsets.UTF_8).replace("\r", ""));
            form.put(section + ".title", "");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
