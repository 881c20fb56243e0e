package org.vanewright.evidence;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Campaigns to publish, made from the demonstration's. */
public final class FlownCampaigns {
    /** The demonstration's campaign of stalls, whose configuration B flies {@value #LAYOUT}. */
    public static final String DEMO = "clean-stall-with-pairs-over-the-taper";

    public static final String LAYOUT = "low-wing-pairs-over-the-taper";

    private FlownCampaigns() {}

    /**
     * @param demo document of the demonstration's campaign
     * @param flaps setting, which decides what it compares with
     * @param shiftKt added to every stall with devices
     */
    public static JsonNode like(JsonNode demo, String name, @Nullable String flaps, double shiftKt) {
        ObjectNode document = (ObjectNode) demo.deepCopy();
        document.put("name", name).put("invented", false);
        ObjectNode conditions = (ObjectNode) document.get("plan").get("conditions");
        conditions.put("flaps", flaps);
        document.get("points").forEach(point -> {
            if (point.get("kind").asString().equals("STALL")
                    && point.get("configuration").asString().equals("B")) {
                ((ObjectNode) point)
                        .put(
                                "indicatedAirspeedKt",
                                point.get("indicatedAirspeedKt").asDouble() + shiftKt);
            }
        });
        return document;
    }

    /** Several with the same setting, each a little different from the next. */
    public static List<JsonNode> series(JsonNode demo, String name, String flaps, int count) {
        List<JsonNode> all = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            all.add(like(demo, name + " " + (i + 1), flaps, 0.3 * (i - (count - 1) / 2.0)));
        }
        return all;
    }
}
