package org.vanewright.campaign.log;

import java.time.Duration;
import org.awaitility.Awaitility;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Waits for what is read in the background. */
public final class Reading {
    private Reading() {}

    /** Returns when everything that waits is read. */
    public static void finish(ApplicationContext service) {
        JdbcClient sql = service.getBean(JdbcClient.class);
        Awaitility.await("logs are read")
                .atMost(Duration.ofMinutes(2))
                .until(() -> sql.sql("select count(*) from job where state in ('WAITING', 'RUNNING')"
                                        + " and kind = 'flight-log'")
                                .query(Integer.class)
                                .single()
                        == 0);
    }
}
