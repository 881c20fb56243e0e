package org.vanewright.platform.form;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/** A field that names an exact revision, such as {@code river-trainer@2}. */
public final class RevisionField {
    private static final Pattern REF = Pattern.compile("([a-z0-9-]{1,80})@([1-9][0-9]{0,5})");

    private RevisionField() {}

    /** What the field holds for a revision; empty for none. */
    public static String value(@Nullable RevisionRef ref) {
        return ref == null || ref.revision() == 0 ? "" : ref.slug() + "@" + ref.revision();
    }

    /** The revision it names; null, with a problem noted for anything but a blank, otherwise. */
    public static @Nullable RevisionRef read(Form form, String path) {
        String typed = form.text(path);
        if (typed == null) {
            return null;
        }
        Matcher matcher = REF.matcher(typed);
        if (!matcher.matches()) {
            form.refuse(new FieldProblem(path, typed, "one of the choices"));
            return null;
        }
        return new RevisionRef(matcher.group(1), Integer.parseInt(matcher.group(2)));
    }

    /** As {@link #read}, without noting a second time that it is unreadable. */
    public static @Nullable RevisionRef quiet(Form form, String path) {
        return read(new Form(form.units()).put(path, (Object) form.value(path)), path);
    }

    /** Published revisions as choices, with the one chosen before among them where it is an older one. */
    public static List<Option> options(List<? extends Revision<?>> published, List<RevisionRef> chosen) {
        List<Option> options = new ArrayList<>();
        published.forEach(
                r -> options.add(new Option(value(r.ref()), r.content().name() + ", revision " + r.number())));
        for (RevisionRef ref : chosen) {
            if (options.stream().noneMatch(o -> o.value().equals(value(ref)))) {
                options.add(new Option(value(ref), ref.slug() + ", revision " + ref.revision() + " (older)"));
            }
        }
        return options;
    }
}
