package org.vanewright.engineering.drawing;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/**
 * Lettering as DXF R12 holds it: printable ASCII. Accents are dropped, common signs are spelt out, degree, plus-minus
 * and diameter use the format's own {@code %%} codes, anything else becomes {@code \}{@code U+} and its code.
 */
final class AsciiText {
    private static final Map<Integer, String> SPELT = spelt();

    private AsciiText() {}

    static String of(String text) {
        StringBuilder out = new StringBuilder(text.length());
        Normalizer.normalize(text, Normalizer.Form.NFD)
                .codePoints()
                .filter(c -> Character.getType(c) != Character.NON_SPACING_MARK)
                .forEach(c -> append(out, c));
        return out.toString();
    }

    private static void append(StringBuilder out, int c) {
        String spelt = SPELT.get(c);
        if (spelt != null) {
            out.append(spelt);
        } else if (c == '%' && out.length() > 0 && out.charAt(out.length() - 1) == '%') {
            // two in a row would start a code
            out.append(" %");
        } else if (c >= ' ' && c < 127) {
            out.append((char) c);
        } else if (Character.isWhitespace(c) || Character.isSpaceChar(c)) {
            out.append(' ');
        } else if (!Character.isISOControl(c) && Character.getType(c) != Character.FORMAT) {
            for (char unit : Character.toChars(c)) {
                out.append(String.format(Locale.ROOT, "\\U+%04X", (int) unit));
            }
        }
    }

    private static Map<Integer, String> spelt() {
        Map<Integer, String> map = new HashMap<>();
        String pairs = "°=%%d ±=%%p ⌀=%%c Ø=%%c ×=x ·=- •=- –=- —=- −=- ‐=- ‑=- ‘=' ’=' “=\" ”=\" …=... µ=u μ=u ²=2 ³=3"
                + " ½=1/2 ¼=1/4 ¾=3/4 ß=ss æ=ae Æ=AE œ=oe Œ=OE ø=o ł=l Ł=L đ=d Đ=D þ=th Þ=Th ð=d →=-> ←=<- ≤=<= ≥=>="
                + " ≈=~ ′=' ″=\" √=sqrt α=alpha β=beta δ=delta Δ=Delta λ=lambda";
        for (String pair : pairs.split(" ", -1)) {
            map.put(pair.codePointAt(0), pair.substring(2));
        }
        // a caret starts a control code in DXF text unless a blank follows
        map.put((int) '^', "^ ");
        return map;
    }
}
