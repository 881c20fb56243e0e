package org.vanewright.record.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.device.DeviceDocument;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.record.CanonicalJson;
import org.vanewright.record.RecordContent;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * A property added to documents leaves the hashes of those without it as they were. The hashes below are of the
 * demonstration documents before any had origins or photographs, computed from their JSON by another program.
 */
class DemoHashesTest {
    private final CanonicalJson json = new CanonicalJson();

    @ParameterizedTest
    @CsvSource({
        "airframes/quillmere-strut-braced-high-wing, efec9f40a5be36b871970afbffd171252616dcb73186c6ac693d0df999716f45",
        "airframes/quillmere-tapered-low-wing, 6d873d133358022fc756b35e02e6cb01fb53a7fc1ca6e0215d5bca7eadc0bda7",
        "devices/ogival-pair-on-one-base, 463254fa22100376abfae4203afad892a1070cd78bd77b7d3a41a4509f5dc7b7",
        "devices/rectangular-vane-8-by-20, 0672f38d39f1d77491e34fde5132ea487ad6c7b3d8ac3f2773432dbb8d6be929",
        "devices/triangular-vane-10-by-25, 7204a5a3a9a18a497dfe0196ffea7c0503b9899625e636f1ea8e07004fee16d2",
        "layouts/high-wing-one-row-co-rotating, cd722acea3cefdf7b78f07e9bf070485010525263391ad4699d4935e249ddfa3",
        "layouts/low-wing-pairs-over-the-taper, 5545b85398bceb29292c1dc5cba4df0972d9532074aadd441178651664f431a2",
        "layouts/low-wing-underside-of-the-stabiliser, 8b4a6908fa30dc422d26c41559508060ce0647e23bd9eb019d0b0eefd33751fa"
    })
    void documentsWithoutOriginsAndPhotographsHaveTheHashesTheyHad(String file, String sha256) throws IOException {
        String plain = without(file, "provenance", "photographs");

        RecordContent document = json.read(plain, type(file));

        assertThat(document.provenance()).isEmpty();
        assertThat(json.sha256(json.write(document))).isEqualTo(sha256);
    }

    @ParameterizedTest
    @CsvSource({
        "airframes/quillmere-strut-braced-high-wing, 5",
        "airframes/quillmere-tapered-low-wing, 3",
        "devices/rectangular-vane-8-by-20, 2",
        "layouts/high-wing-one-row-co-rotating, 1"
    })
    void originsAreWrittenAndReadAgain(String file, int entries) throws IOException {
        RecordContent document = json.read(without(file), type(file));

        assertThat(document.provenance()).hasSize(entries);
        assertThat(json.read(json.write(document), type(file))).isEqualTo(document);
    }

    private static Class<? extends RecordContent> type(String file) {
        return file.startsWith("airframes")
                ? AirframeDocument.class
                : file.startsWith("devices") ? DeviceDocument.class : LayoutDocument.class;
    }

    private static String without(String file, String... properties) throws IOException {
        try (InputStream in = DemoHashesTest.class.getResourceAsStream("/db/demo/" + file + ".json")) {
            ObjectNode tree = (ObjectNode)
                    new JsonMapper().readTree(Objects.requireNonNull(in).readAllBytes());
            tree.remove(List.of(properties));
            return tree.toString();
        }
    }
}
