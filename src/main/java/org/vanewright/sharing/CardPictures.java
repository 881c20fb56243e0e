package org.vanewright.sharing;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import org.springframework.stereotype.Service;
import org.vanewright.engineering.drawing.Lettering;
import org.vanewright.platform.HeapShare;
import org.vanewright.platform.picture.Raster;
import org.vanewright.record.Licence;
import org.vanewright.record.Revision;

/**
 * The picture by which other sites show a link to a record: 1200 by 630 pixels, as the Open Graph protocol's users expect
 * (common practice, no source). It depends on the revision and the instance's name only, and is drawn once for all who ask at
 * the same time.
 */
@Service
public class CardPictures {
    public static final int WIDTH_PX = 1200;
    public static final int HEIGHT_PX = 630;

    private static final long KEPT_BYTES = HeapShare.bytes(20);
    private static final double MARGIN = 72;
    private static final double TITLE_CAP = 44;
    private static final double TITLE_LINE = 72;
    private static final double SMALL_CAP = 19;

    /** The page's colours in light. */
    private static final Raster.Inks INKS = new Raster.Inks(
            new Color(0xf6f2e6),
            new Color(0x1a242e),
            new Color(0x4c5660),
            new Color(0xe4dfcf),
            new Color(0xa0105c),
            new Color(0xf3d9e6));

    private final CardDrawings drawings;
    private final Cache<String, byte[]> kept = Caffeine.newBuilder()
            .maximumWeight(KEPT_BYTES)
            .weigher((String key, byte[] png) -> key.length() + png.length)
            .build();

    CardPictures(CardDrawings drawings) {
        this.drawings = drawings;
    }

    /** All that the picture depends on besides the build. */
    public static String contentKey(String kind, Revision<?> revision, String instance) {
        return "card " + kind + " " + revision.slug() + " " + revision.number() + " " + revision.sha256() + " "
                + revision.contributor() + " " + instance;
    }

    /** Of a public revision, as PNG. */
    public byte[] png(String kind, Revision<?> revision, String instance) {
        return kept.get(contentKey(kind, revision, instance), key -> draw(kind, revision, instance));
    }

    private byte[] draw(String kind, Revision<?> revision, String instance) {
        Raster card = new Raster(WIDTH_PX, HEIGHT_PX, INKS);
        double right = WIDTH_PX - MARGIN;
        mark(card);
        String what = (kind.replace('-', ' ') + ", revision " + revision.number());
        String shown = Character.toUpperCase(what.charAt(0)) + what.substring(1);
        card.text(shown, right - Lettering.widthMm(shown, SMALL_CAP), 92, SMALL_CAP, 0, INKS.soft());
        double y = 178;
        for (String line : lines(revision.content().name(), right - MARGIN)) {
            card.text(line, MARGIN, y, TITLE_CAP, 1.6, INKS.ink());
            y += TITLE_LINE;
        }
        double top = y - 30;
        drawings.of(revision.content()).ifPresent(d -> card.drawing(d, MARGIN, top, right - MARGIN, 505 - top));
        foot(card, revision, instance, right);
        return card.png();
    }

    private static void mark(Raster card) {
        card.area(INKS.accent(), MARGIN, 92, MARGIN + 16, 52, MARGIN + 20, 92);
        card.area(INKS.accent(), MARGIN + 26, 92, MARGIN + 42, 52, MARGIN + 46, 92);
        card.text("Vanewright", MARGIN + 64, 92, 24, 0.8, INKS.ink());
    }

    private static void foot(Raster card, Revision<?> revision, String instance, double right) {
        card.rule(new Color(0xb9b2a0), MARGIN, 536, right - MARGIN, 1.5);
        Licence licence = revision.standing().licence();
        String by = "By " + revision.contributor() + ", "
                + revision.shownAt().toString().substring(0, 10) + (licence == null ? "" : ", " + licence.label());
        String club = revision.content().invented() ? "Invented demonstration data" : instance;
        double clubWidth = Lettering.widthMm(Lettering.fit(club, SMALL_CAP, 420), SMALL_CAP);
        card.text(
                Lettering.fit(by, SMALL_CAP, right - MARGIN - clubWidth - 40), MARGIN, 584, SMALL_CAP, 0, INKS.soft());
        card.text(
                Lettering.fit(club, SMALL_CAP, 420),
                right - clubWidth,
                584,
                SMALL_CAP,
                0,
                revision.content().invented() ? INKS.accent() : INKS.ink());
    }

    /** At most two; what does not fit ends in an ellipsis. */
    private static List<String> lines(String name, double width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        String[] words = name.strip().split("\\s+");
        for (int i = 0; i < words.length; i++) {
            String longer = line.isEmpty() ? words[i] : line + " " + words[i];
            if (lines.isEmpty() && !line.isEmpty() && Lettering.widthMm(longer, TITLE_CAP) > width) {
                lines.add(line.toString());
                line.setLength(0);
                longer = words[i];
            }
            line.setLength(0);
            line.append(longer);
        }
        lines.add(line.toString());
        return lines.stream().map(l -> Lettering.fit(l, TITLE_CAP, width)).toList();
    }
}
