package org.vanewright.platform.form;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.vanewright.record.photograph.PhotographRules;
import org.vanewright.record.provenance.ProvenanceRules;

/** The buttons that add and remove rows in the parts which every record's form has. */
final class SharedLists {
    private static final Pattern REMOVE =
            Pattern.compile("remove (" + OriginFields.LIST + "|" + PhotographFields.LIST + ")\\[(\\d{1,2})]");

    private SharedLists() {}

    /** Does what the button says; one that belongs to another part is left to that part. */
    static void apply(Form form, String action) {
        form.limit(OriginFields.LIST, ProvenanceRules.MOST).limit(PhotographFields.LIST, PhotographRules.MOST);
        if (action.equals("add " + OriginFields.LIST) && form.size(OriginFields.LIST) < ProvenanceRules.MOST) {
            OriginFields.add(form);
        }
        Matcher remove = REMOVE.matcher(action);
        if (remove.matches()) {
            form.remove(remove.group(1), Integer.parseInt(remove.group(2)));
        }
    }
}
