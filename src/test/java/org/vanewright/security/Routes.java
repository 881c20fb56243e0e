package org.vanewright.security;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.springframework.context.ApplicationContext;
import org.springframework.core.MethodParameter;
import org.springframework.http.server.PathContainer;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.RequestMappingInfoHandlerMapping;
import org.springframework.web.util.pattern.PathPattern;
import org.springframework.web.util.pattern.PathPatternParser;

/** Every address that a controller of the running service takes, with its method. */
final class Routes {
    /** Of an address that takes every method. */
    static final String ANY = "ANY";

    /** A variable that is one of a few words, each of which is a route of its own. */
    private static final Pattern CHOICE = Pattern.compile("\\{[a-zA-Z]+:([a-z-]+(?:\\|[a-z-]+)+)}");

    private static final PathPatternParser PARSER = new PathPatternParser();

    /** Some of what controllers read whose signatures do not tell, by a part of their address; else the last. */
    private static final Map<String, List<String>> READ_BY_HAND = Map.of(
            "/bench/", List.of("naca", "coordinates"),
            "/study", List.of("massKg", "condition"),
            "/suggestions", List.of("row", "leastFraction"));

    private static final List<String> READ_ELSEWHERE = List.of("revision", "count", "bedWidthMm");

    private final List<Route> routes = new ArrayList<>();
    private final Map<String, Set<String>> parameters = new HashMap<>();

    /** One method of one address. */
    record Route(String method, PathPattern pattern) {
        @Override
        public String toString() {
            return method + " " + pattern.getPatternString();
        }
    }

    Routes(ApplicationContext service) {
        service.getBeansOfType(RequestMappingInfoHandlerMapping.class)
                .values()
                .forEach(mapping -> mapping.getHandlerMethods()
                        .forEach((info, method) -> add(info)
                                .forEach(route -> parameters
                                        .computeIfAbsent(route.toString(), r -> new TreeSet<>())
                                        .addAll(parameters(route.pattern(), method)))));
    }

    private static Set<String> parameters(PathPattern pattern, HandlerMethod method) {
        Set<String> names = new TreeSet<>();
        for (MethodParameter parameter : method.getMethodParameters()) {
            RequestParam read = parameter.getParameterAnnotation(RequestParam.class);
            if (read != null && !read.name().isEmpty()) {
                names.add(read.name());
            }
            if (parameter.getParameterType() == HttpServletRequest.class) {
                names.addAll(READ_BY_HAND.entrySet().stream()
                        .filter(known -> pattern.getPatternString().contains(known.getKey()))
                        .findFirst()
                        .map(Map.Entry::getValue)
                        .orElse(READ_ELSEWHERE));
            }
        }
        return names;
    }

    /** Names of the parameters that the controller of a call reads. */
    Set<String> parameters(String method, String path) {
        return of(method, path).map(parameters::get).orElse(Set.of());
    }

    private List<Route> add(RequestMappingInfo info) {
        List<Route> added = new ArrayList<>();
        Set<RequestMethod> methods = info.getMethodsCondition().getMethods();
        for (String pattern : info.getPatternValues()) {
            for (String one : choices(pattern)) {
                if (methods.isEmpty()) {
                    added.add(new Route(ANY, PARSER.parse(one)));
                }
                methods.forEach(method -> added.add(new Route(method.name(), PARSER.parse(one))));
            }
        }
        routes.addAll(added);
        return added;
    }

    private static List<String> choices(String pattern) {
        Matcher choice = CHOICE.matcher(pattern);
        if (!choice.find()) {
            return List.of(pattern);
        }
        List<String> all = new ArrayList<>();
        for (String word : choice.group(1).split("\\|", -1)) {
            all.addAll(choices(pattern.substring(0, choice.start()) + word + pattern.substring(choice.end())));
        }
        return all;
    }

    /** In words, each once. */
    Set<String> names() {
        Set<String> names = new TreeSet<>();
        routes.forEach(route -> names.add(route.toString()));
        return names;
    }

    /** The route that a call takes; the most exact one, as Spring chooses. */
    Optional<String> of(String method, String path) {
        PathContainer asked = PathContainer.parsePath(path);
        return routes.stream()
                .filter(route -> route.method().equals(method) || route.method().equals(ANY))
                .filter(route -> route.pattern().matches(asked))
                .min(Comparator.comparing(Route::pattern, PathPattern.SPECIFICITY_COMPARATOR))
                .map(Route::toString);
    }
}
