package org.vanewright.review;

import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.UnitSystem;
import tools.jackson.databind.JsonNode;

/** The fields of any document by path, as its JSON says them. */
final class PlainFields {
    private PlainFields() {}

    static Form of(JsonNode document) {
        Form form = new Form(UnitSystem.METRIC);
        add(form, "", document);
        return form;
    }

    private static void add(Form form, String path, JsonNode node) {
        if (node.isObject()) {
            node.properties().forEach(p -> add(form, path.isEmpty() ? p.getKey() : path + "." + p.getKey(), p.getValue()));
        } else if (node.isArray()) {
            for (int i = 0; i < node.size(); i++) {
                add(form, path + "[" + i + "]", node.get(i));
            }
        } else {
            form.put(path, (Object) node.asString());
        }
    }
}
