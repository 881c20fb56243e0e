package org.vanewright.kit;

import java.net.URI;
import java.net.URISyntaxException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.vanewright.record.CanonicalJson;
import org.vanewright.record.Licence;
import org.vanewright.record.Lists;
import org.vanewright.record.RevisionRef;

/** Reads what an archive says of itself, and believes none of it that can be looked up. */
@Component
class KitReader {
    /** What a layout is made from and flown by. */
    static final Set<String> KINDS = Set.of("airframes", "devices", "layouts", "campaigns");

    private static final int MOST_REVISIONS = 300;
    private static final int MOST_PHOTOGRAPHS = 60;
    private static final int LONGEST = 120;

    private static final Instant EARLIEST = Instant.parse("2000-01-01T00:00:00Z");

    private final CanonicalJson json;
    private final Clock clock;

    KitReader(CanonicalJson json, Clock clock) {
        this.json = json;
        this.clock = clock;
    }

    ReceivedKit read(KitArchive archive) {
        crate(archive);
        KitIndex index = parsed(archive, KitIndex.NAME, KitIndex.class);
        KitRefusal.require(
                KitIndex.FORMAT.equals(index.format())
                        && Integer.valueOf(KitIndex.VERSION).equals(index.version()),
                KitIndex.NAME + " of format " + index.format() + ", version " + index.version(),
                "format " + KitIndex.FORMAT + ", version " + KitIndex.VERSION);
        List<KitIndex.Entry> entries = Lists.present(index.revisions());
        KitRefusal.require(
                !entries.isEmpty() && entries.size() <= MOST_REVISIONS,
                entries.size() + " revisions",
                "1 to " + MOST_REVISIONS);
        Set<String> paths = new HashSet<>();
        List<ReceivedKit.Document> documents = new ArrayList<>();
        for (KitIndex.Entry entry : entries) {
            documents.add(document(archive, entry, paths));
        }
        String layout = String.valueOf(index.layout());
        KitRefusal.require(
                entries.stream().anyMatch(e -> layout.equals(e.path()) && "layouts".equals(e.plural())),
                "layout " + layout,
                "the path of a layout's document");
        return new ReceivedKit(layout, documents, photographs(archive, Lists.present(index.photographs())));
    }

    private ReceivedKit.Document document(KitArchive archive, KitIndex.Entry e, Set<String> earlier) {
        String path = String.valueOf(e.path());
        Integer revision = e.revision();
        KitRefusal.require(
                KINDS.contains(String.valueOf(e.plural())),
                path + " of the kind " + e.plural(),
                "airframes, devices, layouts and campaigns");
        KitRefusal.require(
                isSlug(e.slug()) && revision != null && revision >= 1 && revision <= 999_999,
                path + " called " + e.slug() + " revision " + revision,
                "a name of small letters, digits and hyphens, and a number from 1");
        String text = archive.text(path);
        KitRefusal.require(
                archive.sha256(path).equals(e.sha256()),
                path + " with SHA-256 " + archive.sha256(path),
                "SHA-256 " + e.sha256() + " as in " + KitIndex.NAME);
        people(e, path);
        for (KitIndex.Reference r : Lists.present(e.references())) {
            KitRefusal.require(
                    r.path() != null && earlier.contains(r.path()),
                    path + " naming " + r.plural() + "/" + r.slug() + " revision " + r.revision(),
                    "names of documents that stand before it in the kit");
        }
        KitRefusal.require(earlier.add(path), path + " twice", "every document once");
        String provenance = archive.text(String.valueOf(e.provenance()));
        parsed(archive, String.valueOf(e.provenance()), Map.class);
        return new ReceivedKit.Document(e, text, provenance);
    }

    private void people(KitIndex.Entry e, String path) {
        line(e.contributor(), path + ", contributor", LONGEST);
        line(e.instance(), path + ", instance", LONGEST);
        line(e.name(), path + ", name", 200);
        KitRefusal.require(isAddress(e.url()), path + " from " + e.url(), "the address of an instance, http or https");
        KitRefusal.require(
                isTime(e.createdAt()) && (e.publishedAt() == null || isTime(e.publishedAt())),
                path + " of " + e.createdAt() + ", published " + e.publishedAt(),
                "times from 2000 until now");
        RevisionRef from = e.derivedFrom();
        KitRefusal.require(
                from == null || isSlug(from.slug()) && from.revision() >= 1,
                path + " made from " + from,
                "a name of small letters, digits and hyphens, and a number from 1");
        KitRefusal.require(
                e.licence() == null
                        || Arrays.stream(Licence.values())
                                .anyMatch(l -> l.spdx().equals(e.licence())),
                path + " under the licence " + e.licence(),
                "CC-BY-4.0, CC-BY-SA-4.0 or CC0-1.0");
        KitRefusal.require(
                e.withdrawn() == null || e.withdrawn().length() <= 2000,
                path + " with a long reason for its withdrawal",
                "at most 2000 characters");
    }

    private static void line(@Nullable String text, String what, int longest) {
        KitRefusal.require(
                text != null
                        && !text.isBlank()
                        && text.length() <= longest
                        && text.codePoints().noneMatch(Character::isISOControl),
                what + " “" + text + "”",
                "1 to " + longest + " characters on one line");
    }

    /** Clocks of two clubs may differ by a day. */
    private boolean isTime(@Nullable Instant at) {
        return at != null
                && !at.isBefore(EARLIEST)
                && !at.isAfter(clock.instant().plus(Duration.ofDays(1)));
    }

    private static boolean isSlug(@Nullable String slug) {
        return slug != null && slug.matches("[a-z0-9-]{1,80}");
    }

    private static boolean isAddress(@Nullable String url) {
        if (url == null || url.length() > 300) {
            return false;
        }
        try {
            URI uri = new URI(url);
            return uri.getHost() != null
                    && uri.getUserInfo() == null
                    && uri.getQuery() == null
                    && uri.getFragment() == null
                    && ("http".equals(uri.getScheme()) || "https".equals(uri.getScheme()));
        } catch (URISyntaxException e) {
            return false;
        }
    }

    private static List<String> photographs(KitArchive archive, List<KitIndex.Photograph> named) {
        KitRefusal.require(
                named.size() <= MOST_PHOTOGRAPHS, named.size() + " photographs", "at most " + MOST_PHOTOGRAPHS);
        List<String> hashes = new ArrayList<>();
        for (KitIndex.Photograph p : named) {
            String path = String.valueOf(p.path());
            archive.bytes(path);
            KitRefusal.require(
                    archive.sha256(path).equals(p.sha256()),
                    path + " with SHA-256 " + archive.sha256(path),
                    "SHA-256 " + p.sha256() + " as in " + KitIndex.NAME);
            KitRefusal.require(
                    path.equals("photographs/" + p.sha256() + ".jpg") && !hashes.contains(p.sha256()),
                    path,
                    "every photograph once, named by its SHA-256");
            hashes.add(String.valueOf(p.sha256()));
        }
        return hashes;
    }

    /** The crate's own hashes are a third statement beside manifest and index; all have to agree. */
    private void crate(KitArchive archive) {
        Map<?, ?> crate = parsed(archive, CrateDocument.NAME, Map.class);
        if (!(crate.get("@graph") instanceof List<?> graph)) {
            throw KitRefusal.of(CrateDocument.NAME + " without @graph", "an RO-Crate");
        }
        Set<Object> described = new HashSet<>();
        for (Object each : graph) {
            if (each instanceof Map<?, ?> entity && "File".equals(entity.get("@type"))) {
                String path = String.valueOf(entity.get("@id"));
                described.add(path);
                Object sha256 = entity.get("sha256");
                KitRefusal.require(
                        sha256 == null ? path.equals(CrateDocument.MANIFEST) : sha256.equals(archive.sha256(path)),
                        path + " with SHA-256 " + archive.sha256(path),
                        "SHA-256 " + sha256 + " as in " + CrateDocument.NAME);
            }
        }
        for (String name : archive.names()) {
            KitRefusal.require(
                    name.equals(CrateDocument.NAME) || described.contains(name),
                    name + ", which " + CrateDocument.NAME + " does not describe",
                    "the files of the crate and no other");
        }
    }

    private <T> T parsed(KitArchive archive, String name, Class<T> type) {
        String text = archive.text(name);
        T read;
        try {
            read = json.read(text, type);
        } catch (RuntimeException e) {
            read = null;
        }
        if (read == null) {
            throw KitRefusal.of(name + ", which cannot be read", "JSON of that kind");
        }
        return read;
    }
}
