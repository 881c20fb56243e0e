package org.vanewright.testing;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.concurrent.atomic.AtomicInteger;
import javax.sql.DataSource;
import org.springframework.jdbc.datasource.DelegatingDataSource;

/** A database that counts the statements it is asked. */
public final class StatementCounter extends DelegatingDataSource {
    private final AtomicInteger statements = new AtomicInteger();

    public StatementCounter(DataSource target) {
        super(target);
    }

    /** How many statements that work takes. */
    public int during(Runnable work) {
        int before = statements.get();
        work.run();
        return statements.get() - before;
    }

    @Override
    public Connection getConnection() throws SQLException {
        Connection target = super.getConnection();
        return (Connection) Proxy.newProxyInstance(
                getClass().getClassLoader(), new Class<?>[] {Connection.class}, (proxy, method, arguments) -> {
                    if (method.getName().startsWith("prepare")
                            || method.getName().equals("createStatement")) {
                        statements.incrementAndGet();
                    }
                    try {
                        return method.invoke(target, arguments);
                    } catch (InvocationTargetException e) {
                        throw e.getTargetException();
                    }
                });
    }
}
