package org.vanewright.engineering.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Against 3MF Consortium, 3MF Core Specification 1.4.0, and OPC (ECMA-376 part 2; the .rels type from memory). */
class ThreeMfWriterTest {
    private static final String CORE = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02";
    private static final SolidLabel LABEL = new SolidLabel("Vane <A> & \"B\"\u0001", "Small vane", 3, "ab".repeat(32));

    @Test
    void thePackageHasTheContentTypesAndTheStartPart() throws Exception {
        Map<String, byte[]> parts = unzip(ThreeMfWriter.write(mesh(), LABEL));
        assertThat(parts.keySet()).containsExactly("[Content_Types].xml", "_rels/.rels", "3D/3dmodel.model");
        Document types = parse(part(parts, "[Content_Types].xml"));
        NodeList defaults =
                types.getElementsByTagNameNS("http://schemas.openxmlformats.org/package/2006/content-types", "Default");
        Map<String, String> byExtension = new LinkedHashMap<>();
        for (Element e : elements(defaults)) {
            byExtension.put(e.getAttribute("Extension"), e.getAttribute("ContentType"));
        }
        assertThat(byExtension)
                .containsEntry("rels", "application/vnd.openxmlformats-package.relationships+xml")
                .containsEntry("model", "application/vnd.ms-package.3dmanufacturing-3dmodel+xml");
        Element relationship = elements(parse(part(parts, "_rels/.rels"))
                        .getElementsByTagNameNS(
                                "http://schemas.openxmlformats.org/package/2006/relationships", "Relationship"))
                .get(0);
        assertThat(relationship.getAttribute("Target")).isEqualTo("/3D/3dmodel.model");
        assertThat(relationship.getAttribute("Type"))
                .isEqualTo("http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel");
    }

    @Test
    void theModelIsTheSameClosedMesh() throws Exception {
        Mesh mesh = mesh();
        Document model = model(ThreeMfWriter.write(mesh, LABEL));
        assertThat(model.getDocumentElement().getAttribute("unit")).isEqualTo("millimeter");
        Mesh read = read(model);
        MeshCheck check = MeshCheck.of(read);
        assertThat(check.isSound()).as(check.toString()).isTrue();
        assertThat(read.triangleCount()).isEqualTo(mesh.triangleCount());
        assertThat(check.signedVolumeMm3()).isCloseTo(MeshCheck.of(mesh).signedVolumeMm3(), within(1e-3));
    }

    @Test
    void metadataNameDesignRevisionAndHash() throws Exception {
        Document model = model(ThreeMfWriter.write(mesh(), LABEL));
        Map<String, String> metadata = new LinkedHashMap<>();
        for (Element e : elements(model.getElementsByTagNameNS(CORE, "metadata"))) {
            metadata.put(e.getAttribute("name"), e.getTextContent());
        }
        assertThat(metadata)
                .containsEntry("Title", "Vane <A> & \"B\"?")
                .containsEntry("vw:Design", "Small vane")
                .containsEntry("vw:Revision", "3")
                .containsEntry("vw:SHA-256", "ab".repeat(32));
        // names other than the specification's own must be qualified by a declared namespace
        assertThat(model.getDocumentElement().getAttribute("xmlns:vw")).isNotBlank();
    }

    @Test
    void aPlateIsOneObjectAndAnItemForEveryCopy() throws Exception {
        Mesh mesh = mesh();
        Plate plate = BuildPlate.arrange(mesh, 220, 220, 12, 4).get(0);
        Document model = model(ThreeMfWriter.write(mesh, LABEL, plate));
        assertThat(elements(model.getElementsByTagNameNS(CORE, "object"))).hasSize(1);
        List<Element> items = elements(model.getElementsByTagNameNS(CORE, "item"));
        assertThat(items).hasSize(12);
        for (Element item : items) {
            assertThat(item.getAttribute("objectid")).isEqualTo("1");
            assertThat(item.getAttribute("transform").split(" ")).hasSize(12);
        }
    }

    @Test
    void theSameInputGivesTheSameBytes() {
        assertThat(ThreeMfWriter.write(mesh(), LABEL)).isEqualTo(ThreeMfWriter.write(mesh(), LABEL));
    }

    private static Mesh mesh() {
        DesignBuilder design = new DesignBuilder();
        design.fillet = 1.0;
        design.mark = true;
        return SolidBuilder.build(design.build());
    }

    private static Mesh read(Document model) {
        List<Element> vertices = elements(model.getElementsByTagNameNS(CORE, "vertex"));
        double[] coordinates = new double[3 * vertices.size()];
        for (int i = 0; i < vertices.size(); i++) {
            coordinates[3 * i] = Double.parseDouble(vertices.get(i).getAttribute("x"));
            coordinates[3 * i + 1] = Double.parseDouble(vertices.get(i).getAttribute("y"));
            coordinates[3 * i + 2] = Double.parseDouble(vertices.get(i).getAttribute("z"));
        }
        List<Element> triangles = elements(model.getElementsByTagNameNS(CORE, "triangle"));
        int[] corners = new int[3 * triangles.size()];
        for (int i = 0; i < triangles.size(); i++) {
            for (int k = 0; k < 3; k++) {
                corners[3 * i + k] = Integer.parseInt(triangles.get(i).getAttribute("v" + (k + 1)));
            }
        }
        return new Mesh(coordinates, corners);
    }

    private static Document model(byte[] file) throws Exception {
        return parse(part(unzip(file), "3D/3dmodel.model"));
    }

    private static byte[] part(Map<String, byte[]> parts, String name) {
        byte[] part = parts.get(name);
        assertThat(part).as(name).isNotNull();
        return part == null ? new byte[0] : part;
    }

    private static Document parse(byte[] xml) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        return factory.newDocumentBuilder().parse(new ByteArrayInputStream(xml));
    }

    private static List<Element> elements(NodeList nodes) {
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    private static Map<String, byte[]> unzip(byte[] file) throws IOException {
        Map<String, byte[]> parts = new LinkedHashMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file), StandardCharsets.UTF_8)) {
            for (ZipEntry e = zip.getNextEntry(); e != null; e = zip.getNextEntry()) {
                parts.put(e.getName(), zip.readAllBytes());
            }
        }
        return parts;
    }
}
