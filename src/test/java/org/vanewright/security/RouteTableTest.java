package org.vanewright.security;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import org.springframework.web.servlet.HandlerMapping;
import org.springframework.web.servlet.function.support.RouterFunctionMapping;
import org.springframework.web.servlet.handler.BeanNameUrlHandlerMapping;
import org.vanewright.testing.ServerTest;

/** The tables of who gets in name every route of the service, and nothing else. */
class RouteTableTest extends ServerTest {
    private static final RouteTable PAGES = RouteTable.read("pages.txt");
    private static final RouteTable API = RouteTable.read("api.txt");

    /** Those with controllers, and those without routes of their own. */
    private static final Set<String> MAPPINGS = Set.of(
            "requestMappingHandlerMapping",
            "webEndpointServletHandlerMapping",
            "healthEndpointWebMvcHandlerMapping",
            "controllerEndpointHandlerMapping",
            "routerFunctionMapping",
            "resourceHandlerMapping",
            "welcomePageHandlerMapping",
            "welcomePageNotAcceptableHandlerMapping",
            "viewControllerHandlerMapping",
            "beanNameHandlerMapping",
            "defaultServletHandlerMapping");

    private static final String NO_ID = "00000000-0000-0000-0000-000000000000";

    @Test
    void everyRouteHasALineAndEveryLineARoute() {
        Routes routes = new Routes(context());
        Set<String> listed = new TreeSet<>();
        List<String> astray = new ArrayList<>();
        Stream.concat(PAGES.lines().stream(), API.lines().stream()).forEach(line -> {
            Optional<String> route = routes.of(line.method(), shaped(line));
            route.ifPresent(listed::add);
            if (route.isPresent() == line.outside()) {
                astray.add(line + " is " + route.orElse("no route"));
            }
        });
        assertThat(astray)
                .as("lines whose route is gone, or should not be there")
                .isEmpty();
        Set<String> unlisted = routes.names();
        unlisted.removeAll(listed);
        assertThat(unlisted)
                .as("routes without a line in security/pages.txt or security/api.txt")
                .isEmpty();
    }

    /** The path with something of each subject's shape, which is enough to find its route. */
    private static String shaped(RouteTable.Line line) {
        return line.path()
                .replaceAll(
                        "\\{(draft|shared|waiting|token|other|author|person|pending|closed|invited|nolink|log|sharedlog|job)}",
                        NO_ID)
                .replaceAll("\\{photograph}", "0".repeat(64))
                .replaceAll("\\{(invitation|reset|nothing)}", "A".repeat(43))
                .replaceAll("\\{[a-z]+}", "slug");
    }

    @Test
    void everyFileThatAnybodyMayFetchHasALine() throws IOException {
        List<String> files = Arrays.stream(
                        new PathMatchingResourcePatternResolver().getResources("classpath:/static/**/*.*"))
                .map(file -> file.toString().replaceFirst("^.*/static(/[^\\]]*)]?$", "$1"))
                .toList();
        assertThat(files).isNotEmpty();
        assertThat(PAGES.lines().stream().filter(RouteTable.Line::outside).map(RouteTable.Line::call))
                .containsAll(files);
    }

    /** Another kind of mapping would hold routes that nobody has looked at. */
    @Test
    void noOtherKindOfMappingHoldsRoutes() {
        assertThat(MAPPINGS)
                .containsAll(context().getBeansOfType(HandlerMapping.class).keySet());
        assertThat(context().getBean(RouterFunctionMapping.class).getRouterFunction())
                .isNull();
        assertThat(context().getBean(BeanNameUrlHandlerMapping.class).getHandlerMap())
                .isEmpty();
    }
}
