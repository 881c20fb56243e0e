package org.vanewright.bench.web.page;

import java.util.List;
import java.util.Map;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.Units;

/** One calculator of the bench. */
public interface Calculator {
    /** The last part of its address. */
    String name();

    String title();

    /** What it is for, in a sentence or two. */
    String about();

    List<Field> fields();

    /** What stands in the fields of somebody who comes without any. */
    Map<String, String> example();

    /**
     * Calculates from what was typed, and notes in the form what cannot be read.
     *
     * @throws InvalidInputException naming each field that is missing or out of range
     */
    Answer answer(Form form, Units units);
}
