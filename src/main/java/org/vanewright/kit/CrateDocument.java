package org.vanewright.kit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.vanewright.record.Licence;

/**
 * The description of a kit as RO-Crate (P. Sefton et al., RO-Crate Metadata Specification 1.1.3, 2023,
 * doi:10.5281/zenodo.7867028): JSON-LD, flattened, of the archive, its files, people and licences.
 */
final class CrateDocument {
    /** Prescribed by the specification, "RO-Crate Structure". */
    static final String NAME = "ro-crate-metadata.json";

    static final String MANIFEST = "manifest-sha256.txt";
    private static final String PROFILE = "https://w3id.org/ro/crate/1.1";

    private final KitPlan plan;
    private final List<Object> graph = new ArrayList<>();
    private final List<Object> parts = new ArrayList<>();
    private final Map<String, String> people = new LinkedHashMap<>();
    private final Map<String, Map<String, Object>> things = new LinkedHashMap<>();

    /**
     * A file of the kit.
     *
     * @param path in it
     * @param of the revision it belongs to; absent for what belongs to the whole
     */
    record Part(
            String path,
            String mediaType,
            String description,
            @Nullable String sha256,
            @Nullable Integer size,
            KitIndex.@Nullable Entry of) {}

    private CrateDocument(KitPlan plan) {
        this.plan = plan;
    }

    static Map<String, Object> of(KitPlan plan, List<Part> files) {
        CrateDocument crate = new CrateDocument(plan);
        files.forEach(crate::file);
        List<Object> all = new ArrayList<>();
        all.add(crate.descriptor());
        all.add(crate.root());
        all.addAll(crate.graph);
        all.addAll(crate.things.values());
        Map<String, Object> document = new LinkedHashMap<>();
        document.put("@context", List.of(PROFILE + "/context", Map.of("sha256", "http://schema.org/sha256")));
        document.put("@graph", all);
        return document;
    }

    private Map<String, Object> descriptor() {
        Map<String, Object> d = entity(NAME, "CreativeWork");
        d.put("conformsTo", id(PROFILE));
        d.put("about", id("./"));
        return d;
    }

    private Map<String, Object> root() {
        KitIndex.Entry layout = plan.main().entry();
        Map<String, Object> root = entity("./", "Dataset");
        root.put("name", "Kit of the layout " + layout.name() + ", revision " + layout.revision());
        root.put(
                "description",
                "Everything to print, lay out and stick on, the documents it is made from and the results of "
                        + plan.results().size() + " campaigns that fly it. SHA-256 of the layout's document: "
                        + layout.sha256() + ".");
        // the day it was published, or submitted where no day of publication is known
        root.put("datePublished", String.valueOf(Objects.requireNonNullElse(layout.publishedAt(), layout.createdAt())));
        root.put("identifier", layout.url() + "/layouts/" + layout.slug() + "/revisions/" + layout.revision());
        root.put("version", String.valueOf(layout.revision()));
        root.put("license", licence(layout.licence()));
        root.put("author", person(layout.contributor()));
        root.put("publisher", instance(layout));
        root.put("hasPart", parts);
        return root;
    }

    private void file(Part part) {
        parts.add(id(part.path()));
        Map<String, Object> file = entity(part.path(), "File");
        file.put("name", part.path().substring(part.path().lastIndexOf('/') + 1));
        file.put("description", part.description());
        file.put("encodingFormat", part.mediaType());
        if (part.size() != null) {
            file.put("contentSize", String.valueOf(part.size()));
        }
        if (part.sha256() != null) {
            file.put("sha256", part.sha256());
        }
        KitIndex.Entry of = part.of();
        if (of != null) {
            file.put("author", person(of.contributor()));
            file.put("license", licence(of.licence()));
            file.put("publisher", instance(of));
        }
        graph.add(file);
    }

    private Map<String, Object> person(@Nullable String name) {
        String known = people.computeIfAbsent(String.valueOf(name), n -> "#contributor-" + (people.size() + 1));
        things.computeIfAbsent(known, k -> {
            Map<String, Object> person = entity(k, "Person");
            person.put("name", String.valueOf(name));
            return person;
        });
        return id(known);
    }

    private Map<String, Object> instance(KitIndex.Entry entry) {
        String url = String.valueOf(entry.url());
        things.computeIfAbsent(url, k -> {
            Map<String, Object> instance = entity(k, "Organization");
            instance.put("name", String.valueOf(entry.instance()));
            instance.put("url", k);
            return instance;
        });
        return id(url);
    }

    private Map<String, Object> licence(@Nullable String spdx) {
        for (Licence licence : Licence.values()) {
            if (licence.spdx().equals(spdx)) {
                return licence(licence.url(), licence.label(), licence.meaning());
            }
        }
        return licence("#no-licence", "No licence is stated", "Ask the contributor before you use it.");
    }

    private Map<String, Object> licence(String url, String name, String meaning) {
        things.computeIfAbsent(url, k -> {
            Map<String, Object> licence = entity(k, "CreativeWork");
            licence.put("name", name);
            licence.put("description", meaning);
            return licence;
        });
        return id(url);
    }

    private static Map<String, Object> entity(String id, String type) {
        Map<String, Object> entity = new LinkedHashMap<>();
        entity.put("@id", id);
        entity.put("@type", type);
        return entity;
    }

    private static Map<String, Object> id(String id) {
        return Map.of("@id", id);
    }
}
