package org.vanewright.platform.editing;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.springframework.stereotype.Component;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.multipart.MultipartHttpServletRequest;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.PhotographFields;
import org.vanewright.record.photograph.PhotographIntake;
import org.vanewright.record.photograph.PhotographRules;
import org.vanewright.record.photograph.PhotographUse;

/** Keeps the photographs sent with a form and adds a row for each, whatever else is wrong with the form. */
@Component
public class UploadedPhotographs {
    private final PhotographIntake intake;

    UploadedPhotographs(PhotographIntake intake) {
        this.intake = intake;
    }

    void take(HttpServletRequest request, Form form) {
        if (request instanceof MultipartHttpServletRequest multipart) {
            for (MultipartFile file : multipart.getFiles(PhotographFields.FILES)) {
                if (!file.isEmpty()) {
                    take(file, form);
                }
            }
        }
    }

    private void take(MultipartFile file, Form form) {
        if (form.size(PhotographFields.LIST) >= PhotographRules.MOST) {
            form.refuse(new FieldProblem(
                    PhotographFields.LIST, "one more", "at most " + PhotographRules.MOST + " photographs"));
            return;
        }
        try {
            String sha256 = intake.take(file.getBytes());
            if (PhotographFields.read(form).stream().noneMatch(use -> sha256.equals(use.sha256()))) {
                PhotographFields.add(form, new PhotographUse(sha256, null, null));
            }
        } catch (InvalidInputException e) {
            form.refuse(e.problems());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
