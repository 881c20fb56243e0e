package org.vanewright.sharing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.vanewright.account.BaseUrl;
import org.vanewright.account.InstanceSettings;
import org.vanewright.record.Licence;
import org.vanewright.record.RecordService;
import org.vanewright.record.RecordUse;
import org.vanewright.record.Records;
import org.vanewright.record.Revision;
import org.vanewright.record.Standing;
import tools.jackson.databind.json.JsonMapper;

/** What machines read of one public record's page: Open Graph properties and a schema.org/Dataset. */
@Service
public class RecordMetadata {
    private static final String JSON = "application/json";
    private static final Map<String, List<RecordFile>> FILES = Map.of(
            "devices",
                    List.of(
                            new RecordFile("solid.stl", "model/stl"),
                            new RecordFile("solid.3mf", "model/3mf"),
                            new RecordFile("drawing.pdf", "application/pdf")),
            "layouts",
                    List.of(
                            new RecordFile("template.pdf", "application/pdf"),
                            new RecordFile("stations.csv", "text/csv"),
                            new RecordFile("install-sheet.pdf", "application/pdf")),
            "campaigns",
                    List.of(
                            new RecordFile("results.csv", "text/csv"),
                            new RecordFile("test-card.pdf", "application/pdf")));

    private final Records records;
    private final BaseUrl baseUrl;
    private final InstanceSettings instance;
    private final JsonMapper json;

    RecordMetadata(Records records, BaseUrl baseUrl, InstanceSettings instance, JsonMapper json) {
        this.records = records;
        this.baseUrl = baseUrl;
        this.instance = instance;
        this.json = json;
    }

    private record RecordFile(String name, String type) {}

    /**
     * For the head of a page.
     *
     * @param title name of the record
     * @param description in a sentence
     * @param site name of the instance
     * @param url whole address of the record's page
     * @param canonical the same, where the instance knows its address; null where it does not
     * @param image whole address of its card
     * @param imageAlt what that shows
     * @param feed path of a feed of its own; null for none
     * @param dataset JSON-LD that is safe inside a script element
     */
    public record Shared(
            String title,
            String description,
            String site,
            String url,
            @Nullable String canonical,
            String image,
            String imageAlt,
            @Nullable String feed,
            String dataset) {}

    /** Of a public revision; empty for kinds that are none. */
    public Optional<Shared> of(String plural, Revision<?> revision) {
        return records.ofPlural(plural).map(service -> of(service, revision));
    }

    private Shared of(RecordService<?> service, Revision<?> revision) {
        String path = "/" + service.plural() + "/" + revision.slug();
        String fixed = path + "/revisions/" + revision.number();
        String description = description(service.kind(), revision);
        String site = instance.name();
        return new Shared(
                revision.content().name(),
                description,
                site,
                baseUrl.of(path),
                baseUrl.isConfigured() ? baseUrl.of(path) : null,
                baseUrl.of(fixed + "/card.png"),
                "Card of the " + service.kind().replace('-', ' ') + " “"
                        + revision.content().name() + "”",
                service.plural().equals("airframes") ? path + "/feed.atom" : null,
                safe(json.writeValueAsString(dataset(service, revision, description, site))));
    }

    private static String description(String kind, Revision<?> revision) {
        String what = kind.replace('-', ' ');
        return (revision.content().invented() ? "Invented for demonstration. " : "")
                + Character.toUpperCase(what.charAt(0)) + what.substring(1) + " “"
                + revision.content().name()
                + "”, revision " + revision.number() + ", published by " + revision.contributor() + " on "
                + revision.shownAt().toString().substring(0, 10) + ". A record with its sources, not an approval.";
    }

    private Map<String, Object> dataset(
            RecordService<?> service, Revision<?> revision, String description, String site) {
        String fixed = "/" + service.plural() + "/" + revision.slug() + "/revisions/" + revision.number();
        Standing standing = revision.standing();
        Licence licence = standing.licence();
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("@context", "https://schema.org");
        all.put("@type", "Dataset");
        all.put("@id", baseUrl.of(fixed));
        all.put("url", baseUrl.of(fixed));
        all.put("name", revision.content().name());
        all.put("description", description);
        all.put("version", String.valueOf(revision.number()));
        all.put("identifier", property("SHA-256 of the canonical JSON (RFC 8785)", revision.sha256()));
        all.put("keywords", List.of("vortex generators", service.kind().replace('-', ' ')));
        if (licence != null) {
            all.put("license", licence.url());
        }
        all.put("creator", named(standing.contributorId() == null ? "Organization" : "Person", revision.contributor()));
        all.put("publisher", named("Organization", site));
        all.put("dateCreated", revision.createdAt().toString());
        all.put("datePublished", revision.shownAt().toString());
        all.put("dateModified", revision.shownAt().toString());
        all.put("creativeWorkStatus", revision.state().name().toLowerCase(Locale.ROOT));
        all.put("isAccessibleForFree", true);
        all.put("image", baseUrl.of(fixed + "/card.png"));
        List<String> basis =
                revision.content().uses().stream().map(this::address).toList();
        if (!basis.isEmpty()) {
            all.put("isBasedOn", basis);
        }
        all.put("distribution", distribution(service.plural(), revision));
        return all;
    }

    private String address(RecordUse use) {
        return baseUrl.of("/" + use.plural() + "/" + use.ref().slug() + "/revisions/"
                + use.ref().revision());
    }

    private List<Map<String, Object>> distribution(String plural, Revision<?> revision) {
        List<Map<String, Object>> files = new ArrayList<>();
        String api = "/api/v1/" + plural + "/" + revision.slug() + "/revisions/" + revision.number();
        files.add(download(JSON, api));
        for (RecordFile file : FILES.getOrDefault(plural, List.of())) {
            files.add(download(
                    file.type(),
                    "/" + plural + "/" + revision.slug() + "/" + file.name() + "?revision=" + revision.number()));
        }
        return files;
    }

    private Map<String, Object> download(String type, String path) {
        Map<String, Object> file = new LinkedHashMap<>();
        file.put("@type", "DataDownload");
        file.put("encodingFormat", type);
        file.put("contentUrl", baseUrl.of(path));
        return file;
    }

    private static Map<String, Object> named(String type, String name) {
        Map<String, Object> thing = new LinkedHashMap<>();
        thing.put("@type", type);
        thing.put("name", name);
        return thing;
    }

    private static Map<String, Object> property(String id, String value) {
        Map<String, Object> property = new LinkedHashMap<>();
        property.put("@type", "PropertyValue");
        property.put("propertyID", id);
        property.put("value", value);
        return property;
    }

    /** Nothing in it can end the element it stands in, whatever somebody called a record. */
    private static String safe(String json) {
        return json.replace("<", "\\u003c")
                .replace(">", "\\u003e")
                .replace("&", "\\u0026")
                .replace("\u2028", "\\u2028")
                .replace("\u2029", "\\u2029");
    }
}
