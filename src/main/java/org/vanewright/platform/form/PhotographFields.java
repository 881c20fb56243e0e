package org.vanewright.platform.form;

import java.util.List;
import java.util.stream.IntStream;
import org.vanewright.record.RecordContent;
import org.vanewright.record.photograph.PhotographUse;

/** The part of every record's form that shows its photographs: rows under {@value #LIST}. */
public final class PhotographFields {
    /** Path of the list. */
    public static final String LIST = "photographs";

    /** Name of the field that takes files. */
    public static final String FILES = "photographFiles";

    private PhotographFields() {}

    /** Writes what the document shows into the form. */
    public static void put(Form form, RecordContent document) {
        document.photographs().forEach(use -> add(form, use));
    }

    /** A further row. */
    public static void add(Form form, PhotographUse use) {
        String at = LIST + "[" + form.size(LIST) + "]";
        form.put(at + ".sha256", use.sha256())
                .put(at + ".caption", use.caption())
                .put(at + ".alt", use.alt());
    }

    /** What was typed. */
    public static List<PhotographUse> read(Form form) {
        return IntStream.range(0, form.size(LIST))
                .mapToObj(i -> LIST + "[" + i + "]")
                .map(at -> new PhotographUse(
                        form.text(at + ".sha256"), form.text(at + ".caption"), form.text(at + ".alt")))
                .toList();
    }
}
