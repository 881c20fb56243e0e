package org.vanewright.platform.editing;

import java.util.List;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.UnitSystem;
import org.vanewright.platform.page.Units;
import org.vanewright.record.RecordContent;

/** How one kind of record looks on pages that show every kind: reviews, differences, histories. A feature gives one. */
public interface RecordView<T extends RecordContent> {
    /** Such as {@code "airframe"}. */
    String kind();

    /** What people call one, such as {@code "Airframe"}. */
    String label();

    /** Its fields by path, as its editor would show them. */
    Form fields(T content, UnitSystem units);

    /**
     * Its drawings; empty where it cannot be drawn.
     *
     * @param idPrefix starts every id within, so that two versions can stand on one page
     */
    List<Picture> pictures(T content, Units units, String idPrefix);
}
