package org.vanewright.platform.form;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.vanewright.record.RecordContent;
import org.vanewright.record.provenance.FigureOrigin;
import org.vanewright.record.provenance.Origin;

/** The part of every record's form that says where its figures come from: rows under {@value #LIST}. */
public final class OriginFields {
    /** Path of the list. */
    public static final String LIST = "provenance";

    /** The choices of a row. */
    public static final List<Option> ORIGINS = Option.of(Origin.values(), Origin::label);

    private OriginFields() {}

    /** Writes what the document says into the form. */
    public static void put(Form form, RecordContent document) {
        for (int i = 0; i < document.provenance().size(); i++) {
            FigureOrigin stated = document.provenance().get(i);
            String at = LIST + "[" + i + "]";
            form.put(at + ".figures", stated.figures())
                    .put(at + ".origin", stated.origin())
                    .put(at + ".by", stated.by())
                    .put(at + ".on", stated.on())
                    .put(at + ".instrument", stated.instrument())
                    .put(at + ".citation", stated.citation())
                    .put(at + ".note", stated.note());
        }
    }

    /** What was typed; rows at the end with nothing in them count as not there. */
    public static List<FigureOrigin> read(Form form) {
        int size = form.size(LIST);
        while (size > 0 && isBlank(form, LIST + "[" + (size - 1) + "]")) {
            size--;
        }
        List<FigureOrigin> rows = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            String at = LIST + "[" + i + "]";
            rows.add(new FigureOrigin(
                    form.text(at + ".figures"),
                    form.choice(at + ".origin", Origin.class),
                    form.text(at + ".by"),
                    form.text(at + ".on"),
                    form.text(at + ".instrument"),
                    form.text(at + ".citation"),
                    form.text(at + ".note")));
        }
        return List.copyOf(rows);
    }

    static void add(Form form) {
        String at = LIST + "[" + form.size(LIST) + "]";
        form.put(at + ".figures", "").put(at + ".origin", "").put(at + ".note", "");
    }

    /** The figures a row may speak of. */
    public static List<Option> figures(RecordContent typed) {
        return typed.figureGroups().stream()
                .map(group -> new Option(group.path(), group.words()))
                .toList();
    }

    private static boolean isBlank(Form form, String row) {
        return Stream.of("figures", "origin", "by", "on", "instrument", "citation", "note")
                .allMatch(field -> form.text(row + "." + field) == null);
    }
}
