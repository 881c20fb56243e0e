package org.vanewright.testing;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.config.BeanPostProcessor;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.jdbc.datasource.DelegatingDataSource;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Notes the statements that a request sends to the database, where it carries the header {@value #HEADER} with a word
 * of the test's own.
 */
public final class CountedStatements {
    public static final String HEADER = "Test-Statements";

    private static final Map<String, List<String>> NOTED = new ConcurrentHashMap<>();
    private static final ThreadLocal<@Nullable List<String>> CURRENT = new ThreadLocal<>();

    private CountedStatements() {}

    /** What requests with that word have sent until now. */
    public static List<String> of(String word) {
        return List.copyOf(NOTED.getOrDefault(word, List.of()));
    }

    @Component
    @Order(Ordered.HIGHEST_PRECEDENCE)
    static class Filter extends OncePerRequestFilter {
        @Override
        protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
                throws ServletException, IOException {
            String word = request.getHeader(HEADER);
            if (word == null) {
                chain.doFilter(request, response);
                return;
            }
            CURRENT.set(NOTED.computeIfAbsent(word, w -> new CopyOnWriteArrayList<>()));
            try {
                chain.doFilter(request, response);
            } finally {
                CURRENT.remove();
            }
        }
    }

    @Component
    static class Wrapper implements BeanPostProcessor {
        @Override
        public Object postProcessAfterInitialization(Object bean, String name) {
            return bean instanceof DataSource source ? new Counted(source) : bean;
        }
    }

    private static final class Counted extends DelegatingDataSource {
        Counted(DataSource target) {
            super(target);
        }

        @Override
        public Connection getConnection() throws SQLException {
            Connection connection = super.getConnection();
            return CURRENT.get() == null ? connection : proxy(Connection.class, connection, "");
        }
    }

    /** Statements of a connection are wrapped in their turn; each execution is noted. */
    private static <T> T proxy(Class<T> type, T target, String sql) {
        return type.cast(Proxy.newProxyInstance(type.getClassLoader(), new Class<?>[] {type}, (self, method, given) -> {
            Object result = call(target, method, given);
            String text = given != null && given.length > 0 && given[0] instanceof String s ? s : sql;
            if (method.getName().startsWith("execute")) {
                List<String> noted = CURRENT.get();
                if (noted != null) {
                    noted.add(text);
                }
            }
            return result instanceof Statement && type == Connection.class
                    ? wrapped(method.getReturnType(), result, text)
                    : result;
        }));
    }

    private static <S> Object wrapped(Class<S> type, Object statement, String sql) {
        return proxy(type, type.cast(statement), sql);
    }

    private static @Nullable Object call(Object target, Method method, Object @Nullable [] given) throws Throwable {
        try {
            return method.invoke(target, given);
        } catch (InvocationTargetException e) {
            throw e.getCause();
        }
    }
}
