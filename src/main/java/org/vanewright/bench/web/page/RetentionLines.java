package org.vanewright.bench.web.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.vanewright.bench.RetentionRequest;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.Numbers;

/** Groups of devices typed one a line: a name, a colon, then hours, with a plus behind those of devices still in place. */
final class RetentionLines {
    private static final int LONGEST_SHOWN = 40;
    private static final String ALLOWED = "a name, a colon, then hours parted by blanks, such as Foam: 12.5 31 50+ 50+";

    private RetentionLines() {}

    static List<RetentionRequest.@Nullable Group> read(Form form, String path) {
        List<RetentionRequest.@Nullable Group> groups = new ArrayList<>();
        String typed = form.value(path);
        if (typed.isBlank()) {
            form.refuse(new FieldProblem(path, "missing", "a line for each group"));
        } else if (typed.length() > NumberLines.LONGEST) {
            form.refuse(new FieldProblem(
                    path, typed.length() + " characters", "at most " + NumberLines.LONGEST + " characters"));
        } else {
            String[] rows = typed.split("\\R", -1);
            for (int i = 0; i < rows.length; i++) {
                if (!rows[i].isBlank()) {
                    line(form, path, i + 1, rows[i].strip()).ifPresent(groups::add);
                }
            }
        }
        return groups;
    }

    private static Optional<RetentionRequest.Group> line(Form form, String path, int place, String row) {
        int colon = row.indexOf(':');
        if (colon < 1) {
            refuse(form, path, place, row);
            return Optional.empty();
        }
        List<RetentionRequest.@Nullable Observation> observations = new ArrayList<>();
        for (String word : row.substring(colon + 1).strip().split("[\\s;]+", -1)) {
            Optional<RetentionRequest.Observation> read = observation(word);
            if (read.isEmpty()) {
                refuse(form, path, place, word.isEmpty() ? row : word);
                return Optional.empty();
            }
            observations.add(read.get());
        }
        return Optional.of(new RetentionRequest.Group(row.substring(0, colon).strip(), observations));
    }

    private static Optional<RetentionRequest.Observation> observation(String word) {
        String bare = word.replaceFirst(",$", "");
        boolean kept = bare.endsWith("+");
        String number = kept ? bare.substring(0, bare.length() - 1) : bare;
        return Numbers.parse(number).map(hours -> new RetentionRequest.Observation(hours, !kept));
    }

    private static void refuse(Form form, String path, int place, String row) {
        String shown = row.length() <= LONGEST_SHOWN ? row : row.substring(0, LONGEST_SHOWN - 1) + "…";
        form.refuse(new FieldProblem(path, shown, "line " + place + ": must be " + ALLOWED));
    }
}
