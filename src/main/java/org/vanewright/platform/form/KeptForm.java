package org.vanewright.platform.form;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpSession;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.springframework.http.HttpMethod;
import org.vanewright.platform.page.RequestPath;

/**
 * What somebody typed into a form that could not be taken since its session had ended. It waits in the new session until
 * the page with that form is shown again; nothing is done with it before the person sends it again.
 */
public final class KeptForm {
    private static final String PATH = "kept-form.path";
    private static final String VALUES = "kept-form.values";
    private static final int MOST_BYTES = 500_000;
    private static final Set<String> SECRET = Set.of("password", "secret", "token", "code");

    private KeptForm() {}

    /**
     * Gives the text back, once, for the editor to show instead of what it would start from.
     *
     * @param path to which the form is sent, such as {@code /devices/new}
     */
    public static Optional<Form> take(HttpServletRequest request, String path) {
        HttpSession session = request.getSession(false);
        if (session == null
                || !path.equals(session.getAttribute(PATH))
                || !(session.getAttribute(VALUES) instanceof Map<?, ?> values)) {
            return Optional.empty();
        }
        session.removeAttribute(PATH);
        session.removeAttribute(VALUES);
        Map<String, String[]> parameters = new LinkedHashMap<>();
        values.forEach((name, value) -> parameters.put(String.valueOf(name), new String[] {String.valueOf(value)}));
        return Optional.of(Form.posted(parameters));
    }

    /** Whether some form's text waits. */
    public static boolean waits(HttpServletRequest request) {
        HttpSession session = request.getSession(false);
        return session != null && session.getAttribute(PATH) != null;
    }

    /** Whether the request is a form that somebody filled in by hand. */
    static boolean canKeep(HttpServletRequest request) {
        return HttpMethod.POST.matches(request.getMethod()) && request.getHeader("HX-Request") == null;
    }

    /** The fields of a form without those that nobody but their reader may see. */
    static Map<String, String> fields(HttpServletRequest request) {
        Map<String, String[]> parameters = new HashMap<>(request.getParameterMap());
        parameters.keySet().removeIf(KeptForm::secret);
        Form form = Form.posted(parameters);
        Map<String, String> fields = new LinkedHashMap<>(form.values());
        if (!fields.isEmpty() && parameters.containsKey(Form.UNITS)) {
            fields.put(Form.UNITS, form.units().code());
        }
        return fields;
    }

    private static boolean secret(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        return SECRET.stream().anyMatch(lower::contains);
    }

    /** False where that is too much to keep. */
    static boolean put(HttpServletRequest request, Map<String, String> fields) {
        long bytes = fields.entrySet().stream()
                .mapToLong(e -> e.getKey().length() + e.getValue().getBytes(StandardCharsets.UTF_8).length)
                .sum();
        if (bytes > MOST_BYTES) {
            return false;
        }
        HttpSession session = request.getSession(true);
        session.setAttribute(PATH, RequestPath.of(request));
        session.setAttribute(VALUES, new LinkedHashMap<>(fields));
        return true;
    }
}
