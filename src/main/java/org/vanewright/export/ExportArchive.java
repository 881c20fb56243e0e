package org.vanewright.export;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import org.vanewright.photograph.Photographs;
import org.vanewright.platform.Downloads;
import org.vanewright.platform.StoredZip;
import org.vanewright.platform.job.JobProgress;
import org.vanewright.record.photograph.PhotographUse;

/** Puts what was gathered into one archive, and describes it there. */
final class ExportArchive {
    private static final String MANIFEST = "manifest-sha256.txt";
    private static final String TEXT = "text/plain";

    private final RecordFiles files;
    private final Photographs photographs;
    private final DataPackage.Head head;
    private final List<String> cautions;
    private final DataPackage described = new DataPackage();
    private final StringBuilder manifest = new StringBuilder();

    ExportArchive(RecordFiles files, Photographs photographs, DataPackage.Head head, List<String> cautions) {
        this.files = files;
        this.photographs = photographs;
        this.head = head;
        this.cautions = cautions;
    }

    void write(OutputStream out, JobProgress progress) throws IOException {
        try (StoredZip zip = new StoredZip(out)) {
            text(zip, "README.txt", "readme", "What is in this export", ExportTexts.readMe(head));
            text(
                    zip,
                    "CAUTIONS.txt",
                    "cautions",
                    "Cautions, which hold for everything here",
                    ExportTexts.cautions(cautions));
            photographs(zip, progress);
            files.finish();
            for (TableFile table : files.tables()) {
                table(zip, table);
            }
            for (Map.Entry<String, PartFile> document : files.documents().entrySet()) {
                documents(zip, document.getKey(), document.getValue());
            }
            byte[] descriptor = bytes(described.write(head));
            noted(DataPackage.NAME, Downloads.sha256(descriptor));
            zip.add(DataPackage.NAME, descriptor);
            zip.add(MANIFEST, bytes(manifest.toString()));
        }
    }

    private void text(StoredZip zip, String path, String name, String description, String text) throws IOException {
        byte[] bytes = bytes(text);
        String sha256 = Downloads.sha256(bytes);
        described.text(name, path, "txt", TEXT, bytes.length, sha256, description + ".");
        noted(path, sha256);
        zip.add(path, bytes);
    }

    private void photographs(StoredZip zip, JobProgress progress) throws IOException {
        int done = 0;
        for (String sha256 : files.photographs()) {
            progress.report(
                    done,
                    files.photographs().size(),
                    "photographs: " + done + " of " + files.photographs().size());
            done++;
            byte[] jpeg =
                    photographs.ofSeen(new PhotographUse(sha256, null, null)).orElse(null);
            if (jpeg == null) {
                continue;
            }
            String path = "photographs/" + sha256 + ".jpg";
            files.note(new SharedTables.Photograph(sha256, path, jpeg.length));
            described.file(
                    "photograph-" + sha256, path, "jpg", "image/jpeg", null, jpeg.length, sha256, "A photograph.");
            noted(path, sha256);
            zip.add(path, jpeg);
        }
    }

    private void table(StoredZip zip, TableFile table) throws IOException {
        String path = "tables/" + table.table().name() + ".csv";
        String sha256 = table.file().sha256();
        described.table(table.table(), path, Files.size(table.file().path()), sha256);
        noted(path, sha256);
        zip.add(path, table.file().path(), table.file().crc32());
    }

    private void documents(StoredZip zip, String path, PartFile lines) throws IOException {
        String sha256 = lines.sha256();
        String plural = path.substring(path.indexOf('/') + 1, path.lastIndexOf('.'));
        described.text(
                "documents-" + plural,
                path,
                "jsonl",
                "application/jsonl",
                Files.size(lines.path()),
                sha256,
                "Documents as they are hashed, one a line (RFC 8785), in the order of the table of revisions.");
        noted(path, sha256);
        zip.add(path, lines.path(), lines.crc32());
    }

    private void noted(String path, String sha256) {
        manifest.append(sha256).append("  ").append(path).append('\n');
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
