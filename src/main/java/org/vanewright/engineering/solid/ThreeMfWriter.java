package org.vanewright.engineering.solid;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.vanewright.engineering.solid.Plate.Placement;

/**
 * Writes 3MF (3MF Consortium, 3MF Core Specification 1.4.0, 2025): one mesh object in millimetres, an item for every
 * copy. The same input gives the same bytes: entries in one order with one fixed time.
 */
public final class ThreeMfWriter {
    /** Media type of the file. */
    public static final String MEDIA_TYPE = "model/3mf";

    private static final String CONTENT_TYPES = """
            <?xml version="1.0" encoding="UTF-8"?>
            <Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">
             <Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>
             <Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/>
            </Types>
            """;
    private static final String RELATIONSHIPS = """
            <?xml version="1.0" encoding="UTF-8"?>
            <Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">
             <Relationship Id="rel0" Target="/3D/3dmodel.model"
              Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/>
            </Relationships>
            """;
    private static final LocalDateTime FIXED_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

    private final Mesh mesh;
    private final StringBuilder xml = new StringBuilder();
    /** Six decimals of a millimetre: far finer than any printer, and the same text everywhere. */
    private final DecimalFormat number = new DecimalFormat("0.######", DecimalFormatSymbols.getInstance(Locale.ROOT));

    private ThreeMfWriter(Mesh mesh) {
        this.mesh = mesh;
    }

    /** One piece at the origin of the bed, standing on its trailing edge if it can, otherwise lying on its base. */
    public static byte[] write(Mesh mesh, SolidLabel label) {
        return new ThreeMfWriter(mesh).pack(label, "1 of 1", List.of(BuildPlate.alone(mesh)));
    }

    /** All pieces of one plate, in print order. */
    public static byte[] write(Mesh mesh, SolidLabel label, Plate plate) {
        return new ThreeMfWriter(mesh).pack(label, plate.number() + " of " + plate.plates(), plate.placements());
    }

    private byte[] pack(SolidLabel label, String plate, List<Placement> placements) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
            entry(zip, "[Content_Types].xml", CONTENT_TYPES);
            entry(zip, "_rels/.rels", RELATIONSHIPS);
            entry(zip, "3D/3dmodel.model", model(label, plate, placements));
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory failed", e);
        }
        return bytes.toByteArray();
    }

    private static void entry(ZipOutputStream zip, String name, String text) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(FIXED_TIME);
        zip.putNextEntry(entry);
        zip.write(text.getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
    }

    private String model(SolidLabel label, String plate, List<Placement> placements) {
        xml.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<model unit=\"millimeter\" xml:lang=\"en\"")
                .append(" xmlns=\"http://schemas.microsoft.com/3dmanufacturing/core/2015/02\"")
                .append(" xmlns:vw=\"urn:vanewright:device\">\n");
        metadata("Title", label.title());
        metadata("vw:Design", label.designName());
        metadata("vw:Revision", Integer.toString(label.revision()));
        metadata("vw:SHA-256", label.sha256());
        metadata("vw:Plate", plate);
        xml.append(" <resources>\n  <object id=\"1\" type=\"model\" name=\"")
                .append(escaped(label.designName()))
                .append("\">\n   <mesh>\n    <vertices>\n");
        vertices();
        xml.append("    </vertices>\n    <triangles>\n");
        triangles();
        xml.append("    </triangles>\n   </mesh>\n  </object>\n </resources>\n <build>\n");
        placements.forEach(this::item);
        return xml.append(" </build>\n</model>\n").toString();
    }

    private void metadata(String name, String value) {
        xml.append(" <metadata name=\"")
                .append(name)
                .append("\">")
                .append(escaped(value))
                .append("</metadata>\n");
    }

    private void vertices() {
        for (int v = 0; v < mesh.vertexCount(); v++) {
            xml.append("     <vertex x=\"")
                    .append(number.format(mesh.x(v)))
                    .append("\" y=\"")
                    .append(number.format(mesh.y(v)))
                    .append("\" z=\"")
                    .append(number.format(mesh.z(v)))
                    .append("\"/>\n");
        }
    }

    private void triangles() {
        for (int t = 0; t < mesh.triangleCount(); t++) {
            xml.append("     <triangle v1=\"")
                    .append(mesh.corner(t, 0))
                    .append("\" v2=\"")
                    .append(mesh.corner(t, 1))
                    .append("\" v3=\"")
                    .append(mesh.corner(t, 2))
                    .append("\"/>\n");
        }
    }

    private void item(Placement placement) {
        xml.append("  <item objectid=\"1\" partnumber=\"")
                .append(placement.order())
                .append("\" transform=\"");
        String gap = "";
        for (double m : placement.transform()) {
            xml.append(gap).append(number.format(m));
            gap = " ";
        }
        xml.append("\"/>\n");
    }

    /** XML 1.0 text: markup escaped, characters the standard forbids replaced. */
    private static String escaped(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(c -> {
            switch (c) {
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '&' -> out.append("&amp;");
                case '"' -> out.append("&quot;");
                default -> out.appendCodePoint(isAllowed(c) ? c : '?');
            }
        });
        return out.toString();
    }

    private static boolean isAllowed(int c) {
        return c == '\t'
                || c == '\n'
                || c == '\r'
                || (c >= 0x20 && c <= 0xD7FF)
                || (c >= 0xE000 && c <= 0xFFFD)
                || c >= 0x10000;
    }
}
