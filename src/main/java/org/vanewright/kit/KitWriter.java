package org.vanewright.kit;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.vanewright.photograph.Photographs;
import org.vanewright.platform.Downloads;
import org.vanewright.platform.StoredZip;
import org.vanewright.platform.job.JobProgress;
import org.vanewright.record.CanonicalJson;
import org.vanewright.record.photograph.PhotographUse;

/** Writes kits, one file at a time, so that no more than one of them is in memory. */
@Component
class KitWriter {
    private static final String TEXT = "text/plain;charset=UTF-8";
    private static final String JSON = "application/json";

    private final List<KitFiles<?>> sources;
    private final KitTexts texts;
    private final Photographs photographs;
    private final CanonicalJson json;

    KitWriter(List<KitFiles<?>> sources, KitTexts texts, Photographs photographs, CanonicalJson json) {
        this.sources = sources.stream()
                .sorted(Comparator.comparing(s -> s.getClass().getName()))
                .toList();
        this.texts = texts;
        this.photographs = photographs;
        this.json = json;
    }

    void write(KitPlan plan, OutputStream out, JobProgress progress) throws IOException {
        try (StoredZip zip = new StoredZip(out)) {
            new Writing(plan, zip, progress).all();
        }
    }

    private final class Writing {
        private final KitPlan plan;
        private final StoredZip zip;
        private final JobProgress progress;
        private long revisionsDone;
        private final List<CrateDocument.Part> parts = new ArrayList<>();

        private Writing(KitPlan plan, StoredZip zip, JobProgress progress) {
            this.plan = plan;
            this.zip = zip;
            this.progress = progress;
        }

        void all() throws IOException {
            text("README.txt", "What is in this kit", KitTexts.readMe(plan));
            text("CAUTIONS.txt", "Cautions, which hold for every file", texts.cautions(plan));
            text("LICENCES.txt", "Licence of every record", KitTexts.licences(plan));
            for (KitRevision<?> revision : plan.revisions()) {
                if (hasFiles(revision)) {
                    files(revision);
                }
                revisionsDone++;
            }
            for (KitRevision<?> revision : plan.revisions()) {
                documents(revision);
                revisionsDone++;
            }
            List<KitIndex.Photograph> pictures = photographs();
            add(
                    KitIndex.NAME,
                    JSON,
                    "Index of the kit, for an importing instance",
                    bytes(json.write(index(pictures))),
                    null);
            describe();
        }

        /** The layout's own, those of its devices, and those of the campaigns; other layouts that were flown are documents. */
        private boolean hasFiles(KitRevision<?> revision) {
            return switch (revision.service().kind()) {
                case "layout" -> revision.equals(plan.main());
                case "device" ->
                    plan.main().here().content().uses().stream()
                            .anyMatch(use -> use.plural().equals("devices")
                                    && use.ref().equals(revision.here().ref()));
                default -> true;
            };
        }

        private void files(KitRevision<?> revision) throws IOException {
            for (KitFile file : revision.files(sources)) {
                add(
                        revision.folder() + "/" + file.name(),
                        file.mediaType(),
                        file.description(),
                        PlainParts.of(file),
                        revision.entry());
            }
        }

        private void documents(KitRevision<?> revision) throws IOException {
            KitIndex.Entry entry = revision.entry();
            String what = revision.service().kind() + " " + entry.slug() + ", revision " + entry.revision();
            add(String.valueOf(entry.path()), JSON, "Document of the " + what, bytes(revision.canonical()), entry);
            add(
                    String.valueOf(entry.provenance()),
                    JSON,
                    "History of the " + what + " (W3C PROV-JSON)",
                    bytes(revision.provenance()),
                    entry);
        }

        private List<KitIndex.Photograph> photographs() throws IOException {
            Set<String> seen = new LinkedHashSet<>();
            List<KitIndex.Photograph> found = new ArrayList<>();
            for (KitRevision<?> revision : plan.revisions()) {
                for (PhotographUse use : revision.here().content().photographs()) {
                    String sha256 = String.valueOf(use.sha256());
                    byte[] jpeg = photographs.ofSeen(use).orElse(null);
                    if (jpeg != null && seen.add(sha256)) {
                        String path = "photographs/" + sha256 + ".jpg";
                        add(path, "image/jpeg", "Photograph", jpeg, revision.entry());
                        found.add(new KitIndex.Photograph(sha256, path));
                    }
                }
            }
            return found;
        }

        private KitIndex index(List<KitIndex.Photograph> pictures) {
            List<KitIndex.Entry> entries = new ArrayList<>();
            List<String> results = new ArrayList<>();
            for (KitRevision<?> r : plan.revisions()) {
                entries.add(r.entry());
                if (r.service().kind().equals("campaign")
                        && plan.results().contains(r.here().ref())) {
                    results.add(r.entry().path());
                }
            }
            return new KitIndex(
                    KitIndex.FORMAT, KitIndex.VERSION, plan.main().entry().path(), results, entries, pictures);
        }

        /** The crate names the manifest without a hash, since the manifest has the crate's. */
        private void describe() throws IOException {
            List<CrateDocument.Part> all = new ArrayList<>(parts);
            all.add(new CrateDocument.Part(
                    CrateDocument.MANIFEST, TEXT, "SHA-256 of every other file", null, null, null));
            add(CrateDocument.NAME, "application/ld+json", "", bytes(json.write(CrateDocument.of(plan, all))), null);
            StringBuilder manifest = new StringBuilder();
            parts.stream()
                    .sorted(Comparator.comparing(CrateDocument.Part::path))
                    .forEach(p -> manifest.append(p.sha256())
                            .append("  ")
                            .append(p.path())
                            .append('\n'));
            zip.add(CrateDocument.MANIFEST, bytes(manifest.toString()));
        }

        private void text(String name, String description, String text) throws IOException {
            add(name, TEXT, description, bytes(text), null);
        }

        private void add(String path, String type, String description, byte[] bytes, KitIndex.@Nullable Entry of)
                throws IOException {
            progress.report(revisionsDone, 2L * plan.revisions().size(), "Writing " + path);
            parts.add(new CrateDocument.Part(path, type, description, Downloads.sha256(bytes), bytes.length, of));
            zip.add(path, bytes);
        }

        private static byte[] bytes(String text) {
            return text.getBytes(StandardCharsets.UTF_8);
        }
    }
}
